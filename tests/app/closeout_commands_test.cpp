// SPDX-License-Identifier: GPL-3.0-or-later
// arcw closeout on a real logbook file, from the first look to the superseding record.
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sstream>

#include "app/closeout_report.hpp"
#include "app/command_list.hpp"
#include "app/workbench.hpp"
#include "source_dir.hpp"
#include "storage/sqlite_logbook.hpp"
#include "tests/support/closeout_folder.hpp"
#include "tests/support/fakes.hpp"

namespace arc::app {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;
using test::shell;

struct Answer {
    int code;
    std::string out, err;
};

class CloseoutCommand : public ::testing::Test {
  protected:
    void SetUp() override {
        ::setenv("ARCWRIGHT_HOME", (temporary / "home").c_str(), 1);
        auto made = storage::createLogbook(path(), clock, random);
        ASSERT_TRUE(made) << made.error().sentence();
        const test::MemoryLogbook small = test::smallJob();
        std::vector<Entry> entries;
        for (const Tool& tool : small.toolList) entries.emplace_back(tool);
        for (const Job& job : small.jobList) entries.emplace_back(job);
        for (const Cable& cable : small.cableList) entries.emplace_back(cable);
        for (const Closure& closure : small.closureList) entries.emplace_back(closure);
        for (const SpliceArc& arc : small.arcList) entries.emplace_back(arc);
        append(**made, entries);
    }
    void TearDown() override { ::unsetenv("ARCWRIGHT_HOME"); }

    [[nodiscard]] std::string path() const { return (temporary / "crew.arcbook").string(); }
    [[nodiscard]] std::string folder(const char* name) const { return (temporary / name).string(); }

    static void append(Logbook& book, const std::vector<Entry>& entries) {
        const auto receipt = book.append(entries, {"Ada", "test", {}});
        ASSERT_TRUE(receipt) << receipt.error().sentence();
    }
    Answer run(std::vector<std::string> arguments) {
        std::ostringstream out, err;
        Environment environment{out, err, clock, random};
        arguments.insert(arguments.begin(), {"closeout", path(), "--job", "HR-B"});
        const int code = runArcw(arguments, environment);
        return {code, out.str(), err.str()};
    }
    std::string pdfText(const std::string& record) {
        const auto text = shell("pdftotext -layout '" + record + "/record.pdf' -");
        EXPECT_EQ(text.code, 0) << text.text;
        return text.text;
    }
    /// The word runs up the page, so the tool gives its letters in the order they were painted.
    static bool hasWatermark(const std::string& record) {
        return shell("pdftotext -raw '" + record + "/record.pdf' - | tr -d ' \\n'").text.find("DRAFT") !=
               std::string::npos;
    }
    void decideAll() {
        ASSERT_EQ(run({"--dispose", "*", "--by", "Quality office", "--reason", "agreed on site"}).code, 0);
    }

    test::TempFolder temporary;
    test::FakeClock clock;
    test::FakeRandom random;
};

TEST_F(CloseoutCommand, ListsTheExceptionsWithTheirKeys) {
    const Answer text = run({});
    EXPECT_EQ(text.code, 1);
    EXPECT_NE(text.out.find("missing/HR-17/1"), std::string::npos) << text.out;
    const Answer answer = run({"--format", "json"});
    EXPECT_EQ(answer.code, 1);
    const json seen = json::parse(answer.out);
    EXPECT_EQ(seen["verdict"], "open");
    EXPECT_EQ(seen["open_exceptions"], 2);
    EXPECT_EQ(seen["exceptions"][0]["key"], "over_limit/HR-17/3/00000006");
    EXPECT_EQ(answer.err, "");
}

TEST_F(CloseoutCommand, WritesADraftThatVerifiesAndMayBeWrittenAgain) {
    for (int i = 0; i < 2; ++i) {
        const Answer written = run({"--out", folder("draft"), "--format", "json"});
        ASSERT_EQ(written.code, 0) << written.err;
        EXPECT_EQ(json::parse(written.out)["files"].size(), 4u);
        NoProgress progress;
        const auto verified = storage::verifyCloseout(folder("draft"), progress);
        ASSERT_TRUE(verified) << verified.error().sentence();
        EXPECT_EQ(verified->manifest.state, "draft");
        EXPECT_EQ(verified->manifest.files.size(), 4u);
        EXPECT_EQ(verified->manifestSha256, json::parse(written.out)["manifest_sha256"]);
    }
    auto book = storage::openLogbook(path(), storage::OpenMode::ReadOnly, clock, random);
    EXPECT_EQ((*book)->journalHead(),
              json::parse(test::contents(fs::path(folder("draft")) / "record.json"))["journal_head"]
                  .get<std::string>());
}

TEST_F(CloseoutCommand, ThePagesCarryTheRowsAsText) {
    ASSERT_EQ(run({"--out", folder("draft")}).code, 0);
    const std::string text = pdfText(folder("draft"));
    for (const char* words :
         {"Closeout record", "HR-B", "Draft, not issued", "Open", "Sample: single fibre", "Page 1 of", "blue",
          "orange", "green", "over limit", "kept, fibre is short", "0.16", "Link budget", "1310",
          "Signatures", "Follow local codes and licensed practice",
          "1 of 4 planned splices is missing: fibre 4", "S-01"})
        EXPECT_NE(text.find(words), std::string::npos) << words << "\n" << text;
    EXPECT_TRUE(hasWatermark(folder("draft")));
    const auto fonts = shell("pdffonts '" + folder("draft") + "/record.pdf' | tail -n +3");
    EXPECT_EQ(fonts.code, 0);
    EXPECT_FALSE(fonts.text.empty());
    std::istringstream lines(fonts.text);
    for (std::string line; std::getline(lines, line);) {
        // Columns of the tool: type, encoding, embedded, subset, has a map to text.
        std::istringstream columns(line.substr(std::min(line.find(" CID TrueType "), line.size())));
        std::string cid, type, encoding, isEmbedded, subset, hasText;
        columns >> cid >> type >> encoding >> isEmbedded >> subset >> hasText;
        EXPECT_EQ(encoding + " " + isEmbedded + " " + hasText, "Identity-H yes yes") << line;
    }
    EXPECT_EQ(shell("pdfimages -list '" + folder("draft") + "/record.pdf' | tail -n +3").text, "");
}

TEST_F(CloseoutCommand, ThePagesSpeakTheLanguageAskedForAndTheDataStaysAsItIs) {
    ASSERT_EQ(run({"--out", folder("english")}).code, 0);
    ASSERT_EQ(run({"--out", folder("spanish"), "--language", "es"}).code, 0);
    const std::string text = pdfText(folder("spanish"));
    for (const char* words :
         {"Acta de cierre", "HR-B", "Borrador, sin emitir", "Abierto", "Página 1 de", "azul", "naranja",
          "sobre el límite", "kept, fibre is short", "0.16", "Presupuesto del enlace", "Firmas",
          "Respete las normas locales", "falta 1 de 4 empalmes previstos: fibra 4"})
        EXPECT_NE(text.find(words), std::string::npos) << words << "\n" << text;
    for (const char* words : {"Closeout", "Splice", "Fibre", "blue", "Page", "never look", "exception"})
        EXPECT_EQ(text.find(words), std::string::npos) << words << "\n" << text;
    EXPECT_TRUE(test::contents(fs::path(folder("english")) / "splices.csv") ==
                test::contents(fs::path(folder("spanish")) / "splices.csv"));
    EXPECT_EQ(run({"--out", folder("no"), "--language", "tlh"}).code, 2);
    EXPECT_FALSE(fs::exists(folder("no")));
    {
        auto book = storage::openLogbook(path(), storage::OpenMode::ReadWrite, clock, random);
        append(**book, {closeout::pageLanguageSetting(closeout::PageLanguage::Spanish)});
    }
    ASSERT_EQ(run({"--out", folder("chosen")}).code, 0);
    EXPECT_NE(pdfText(folder("chosen")).find("Acta de cierre"), std::string::npos);
}

TEST_F(CloseoutCommand, WordsStandOnTheirBaseline) {
    ASSERT_EQ(run({"--out", folder("draft"), "--paper", "a4"}).code, 0);
    const auto boxes =
        shell("pdftotext -bbox '" + folder("draft") + "/record.pdf' - | grep '>Page<' | head -1");
    const auto value = [&](const std::string& name) {
        const auto at = boxes.text.find(name + "=\"");
        EXPECT_NE(at, std::string::npos) << boxes.text;
        return at == std::string::npos ? 0.0
                                       : std::strtod(boxes.text.c_str() + at + name.size() + 2, nullptr);
    };
    const double top = value("yMin"), bottom = value("yMax");
    // The footer's baseline lies 12 mm above the edge of the paper of 297 mm; 72 points are 25.4 mm.
    constexpr double baseline = (297.0 - 12.0) * 72 / 25.4;
    EXPECT_LT(top, baseline - 3);
    EXPECT_GT(bottom, baseline);
    EXPECT_LT(bottom, baseline + 4);
}

TEST_F(CloseoutCommand, PhotosAndNotesLieBesideTheRecordNamedWithTheirHashes) {
    const std::string photo("\xff\xd8\xff\xe0 a tray, seen from above", 29);
    {
        auto book = storage::openLogbook(path(), storage::OpenMode::ReadWrite, clock, random);
        CareRecord care;
        care.id = test::idOf<CareId>(71);
        care.tool = test::idOf<ToolId>(test::splicerNumber);
        care.at = test::at("2031-03-03T07:00:00+01:00");
        care.action = "groove_clean";
        CareRecord elsewhere = care;
        elsewhere.id = test::idOf<CareId>(72);
        elsewhere.at = test::at("2031-04-03T07:00:00+02:00");
        append(
            **book,
            {care, elsewhere,
             Attachment{test::idOf<EntryId>(1), test::idOf<ClosureId>(1).uuid, "tray 1.jpg", "image/jpeg",
                        photo},
             Attachment{test::idOf<EntryId>(2), test::idOf<ArcId>(6).uuid, "../Übergabe.txt", "text/plain",
                        "short"},
             Attachment{test::idOf<EntryId>(3), care.id.uuid, "groove.jpg", "image/jpeg", photo + "2"},
             Attachment{test::idOf<EntryId>(4), elsewhere.id.uuid, "later.jpg", "image/jpeg", photo + "3"}});
    }
    ASSERT_EQ(run({"--out", folder("draft")}).code, 0);
    const fs::path record = folder("draft");
    const json data = json::parse(test::contents(record / "record.json"));
    ASSERT_EQ(data.at("attachments").size(), 3u) << "care after the job is not of the job";
    const std::vector<std::string> files{"attachment-001-tray_1.jpg", "attachment-002-",
                                         "attachment-003-groove.jpg"};
    const std::vector<std::string> where{"closure HR-17",
                                         "HR-17, splice of 2031-03-03T08:10:00+01:00 on S-01",
                                         "S-01, care groove clean of 2031-03-03T07:00:00+01:00"};
    for (std::size_t i = 0; i < files.size(); ++i) {
        const json& one = data["attachments"][i];
        const std::string file = one["file"];
        EXPECT_TRUE(file.starts_with(files[i])) << file;
        EXPECT_EQ(one["where"], where[i]);
        // By a tool that is not ours.
        const auto sum = shell("sha256sum < '" + (record / file).string() + "'");
        EXPECT_EQ(one["sha256"], sum.text.substr(0, 64)) << sum.text;
        EXPECT_NE(
            test::contents(record / "manifest.json").find(sum.text.substr(0, 64) + "\", \"name\": \"" + file),
            std::string::npos);
    }
    EXPECT_EQ(test::contents(record / files[0]), photo);
    EXPECT_EQ(data["attachments"][1]["name"], "../Übergabe.txt") << "as it was attached";
    // The paper and the workbook name them too.
    const auto pages = pdfText(folder("draft"));
    EXPECT_NE(pages.find("Photos and notes"), std::string::npos);
    for (const json& one : data["attachments"]) {
        EXPECT_NE(pages.find(one["sha256"].get<std::string>().substr(0, 16)), std::string::npos) << one;
        EXPECT_NE(pages.find(one["file"].get<std::string>()), std::string::npos) << one;
    }
    const auto cells = shell("unzip -p '" + (record / "record.xlsx").string() + "' xl/sharedStrings.xml");
    for (const json& one : data["attachments"])
        for (const char* const key : {"file", "name", "where", "sha256"})
            EXPECT_NE(cells.text.find(one[key].get<std::string>()), std::string::npos) << key;
    const auto schema = shell("python3 -I -m jsonschema -i '" + (record / "record.json").string() +
                              "' '" ARC_SOURCE_DIR "/resources/closeout/closeout-record-1.schema.json'");
    EXPECT_EQ(schema.code, 0) << schema.text;
    NoProgress progress;
    ASSERT_TRUE(storage::verifyCloseout(record, progress));
    // A draft with its attachments gives way to the next one.
    ASSERT_EQ(run({"--out", folder("draft")}).code, 0);
    std::ofstream(record / files[0], std::ios::binary) << photo << "!";
    const auto changed = storage::verifyCloseout(record, progress);
    ASSERT_FALSE(changed);
    EXPECT_EQ(changed.error().what.find(files[0]), 0u) << changed.error().what;
}

TEST_F(CloseoutCommand, AChangedBitOfAnyFileIsFoundThePagesToo) {
    ASSERT_EQ(run({"--out", folder("draft")}).code, 0);
    // Pages, workbook, two tables of data, manifest, signature.
    EXPECT_EQ(test::flipSomeBits(folder("draft"), 200), 6u * 200);
    NoProgress progress;
    EXPECT_TRUE(storage::verifyCloseout(folder("draft"), progress)) << "all was put back";
}

TEST_F(CloseoutCommand, AChangedBitOfABigRecordIsFound) {
    {
        auto book = storage::openLogbook(path(), storage::OpenMode::ReadWrite, clock, random);
        std::vector<Entry> entries;
        for (int n = 0; n < 2'000; ++n) {
            SpliceArc arc =
                test::arcWith(1000 + n, "2031-03-03T12:00:00+01:00", std::to_string(5 + n), Loss{30}, 1);
            arc.at.ms += n * std::int64_t{60'000};
            entries.emplace_back(arc);
        }
        append(**book, entries);
    }
    ASSERT_EQ(run({"--out", folder("big")}).code, 0);
    EXPECT_EQ(test::flipSomeBits(folder("big"), 12), 6u * 12);
}

TEST_F(CloseoutCommand, ThePaperIsTheCrewsChoiceUnlessAsked) {
    {
        auto book = storage::openLogbook(path(), storage::OpenMode::ReadWrite, clock, random);
        append(**book, {closeout::paperSetting(closeout::PaperSize::Letter)});
    }
    ASSERT_EQ(run({"--out", folder("chosen")}).code, 0);
    ASSERT_EQ(run({"--out", folder("asked"), "--paper", "a4"}).code, 0);
    EXPECT_NE(shell("pdfinfo '" + folder("chosen") + "/record.pdf'").text.find("612 x 792 pts"),
              std::string::npos);
    EXPECT_NE(shell("pdfinfo '" + folder("asked") + "/record.pdf'").text.find("595 x 842 pts"),
              std::string::npos);
}

TEST_F(CloseoutCommand, PaperIsAsAsked) {
    ASSERT_EQ(run({"--out", folder("a4")}).code, 0);
    ASSERT_EQ(run({"--out", folder("letter"), "--paper", "letter"}).code, 0);
    // ISO 216: 210 x 297 mm; US Letter: 8.5 x 11 inches; points of 1/72 inch.
    EXPECT_NE(shell("pdfinfo '" + folder("a4") + "/record.pdf'").text.find("595 x 842 pts"),
              std::string::npos);
    EXPECT_NE(shell("pdfinfo '" + folder("letter") + "/record.pdf'").text.find("612 x 792 pts"),
              std::string::npos);
    EXPECT_EQ(run({"--out", folder("no"), "--paper", "a3"}).code, 2);
    EXPECT_FALSE(fs::exists(folder("no")));
}

TEST_F(CloseoutCommand, AFinalRecordNeedsEveryDispositionWithNameAndReason) {
    const Answer early = run({"--out", folder("final"), "--final", "--by", "Quality office"});
    EXPECT_EQ(early.code, 1);
    EXPECT_NE(early.err.find("over_limit/HR-17/3/00000006, missing/HR-17/1"), std::string::npos) << early.err;
    EXPECT_FALSE(fs::exists(folder("final")));
    EXPECT_EQ(run({"--dispose", "missing/HR-17/1", "--by", "QA"}).code, 2);
    EXPECT_EQ(run({"--dispose", "missing/HR-17/1", "--reason", "why"}).code, 2);
    EXPECT_EQ(run({"--dispose", "missing/nowhere", "--by", "QA", "--reason", "why"}).code, 2);
    EXPECT_EQ(run({"--dispose", "missing/*", "--by", "QA", "--reason", "dark fibre"}).code, 0);
    EXPECT_EQ(run({"--out", folder("final"), "--final", "--by", "Quality office"}).code, 1);
    decideAll();
    {
        // The pattern left the earlier decision alone; its whole key decides anew.
        auto book = storage::openLogbook(path(), storage::OpenMode::ReadOnly, clock, random);
        const auto decided = (*book)->dispositions(test::idOf<JobId>(1));
        ASSERT_EQ(decided->size(), 2u);
        EXPECT_EQ(std::ranges::count(*decided, "dark fibre", &ExceptionDisposition::reason), 1);
    }
    EXPECT_EQ(run({"--dispose", "*", "--by", "QA", "--reason", "again"}).code, 2);
    EXPECT_EQ(run({"--dispose", "missing/HR-17/1", "--by", "QA", "--reason", "again"}).code, 0);
    EXPECT_EQ(run({}).code, 0);
    EXPECT_EQ(run({"--out", folder("final"), "--final"}).code, 2);
    EXPECT_EQ(run({"--final", "--by", "Quality office"}).code, 2);
}

TEST_F(CloseoutCommand, ARejectedExceptionMakesTheRecordNotAccepted) {
    decideAll();
    ASSERT_EQ(
        run({"--dispose", "missing/HR-17/1", "--by", "QA", "--reason", "must be spliced", "--as", "rejected"})
            .code,
        0);
    const Answer issued = run({"--out", folder("final"), "--final", "--by", "QA", "--format", "json"});
    ASSERT_EQ(issued.code, 0) << issued.err;
    EXPECT_EQ(json::parse(issued.out)["verdict"], "not_accepted");
    EXPECT_NE(pdfText(folder("final")).find("rejected: must be spliced"), std::string::npos);
}

TEST_F(CloseoutCommand, ARefusedFinalRecordNamesTheOpenExceptionsInJsonToo) {
    const Answer refused = run({"--out", folder("final"), "--final", "--by", "QA", "--format", "json"});
    EXPECT_EQ(refused.code, 1);
    EXPECT_EQ(json::parse(refused.out)["open_exceptions"], 2);
}

TEST_F(CloseoutCommand, FinalRecordsAreNumberedSupersededAndNeverChanged) {
    decideAll();
    const Answer first =
        run({"--out", folder("one"), "--final", "--by", "Quality office", "--format", "json"});
    ASSERT_EQ(first.code, 0) << first.err;
    EXPECT_EQ(json::parse(first.out)["number"], 1);
    EXPECT_EQ(json::parse(first.out)["verdict"], "accepted_with_exceptions");
    const std::string manifest = test::contents(fs::path(folder("one")) / "manifest.json");
    const std::string text = pdfText(folder("one"));
    EXPECT_NE(text.find("Record no. 1, issued by Quality office"), std::string::npos) << text;
    EXPECT_NE(text.find("agreed on site"), std::string::npos);
    EXPECT_FALSE(hasWatermark(folder("one")));

    EXPECT_EQ(run({"--out", folder("one"), "--final", "--by", "Quality office"}).code, 1);
    EXPECT_EQ(test::contents(fs::path(folder("one")) / "manifest.json"), manifest);
    const Answer second =
        run({"--out", folder("two"), "--final", "--by", "Quality office", "--format", "json"});
    ASSERT_EQ(second.code, 0) << second.err;
    EXPECT_EQ(json::parse(second.out)["number"], 2);
    EXPECT_NE(pdfText(folder("two")).find("supersedes no. 1"), std::string::npos);

    auto book = storage::openLogbook(path(), storage::OpenMode::ReadOnly, clock, random);
    const auto issued = (*book)->issuedRecords(test::idOf<JobId>(1));
    ASSERT_EQ(issued->size(), 2u);
    EXPECT_EQ(issued->at(0).manifestSha256, storage::sha256Hex(manifest));
    EXPECT_EQ(issued->at(1).supersedes, 1);
    const std::string check = "python3 -I -m jsonschema -i '" + folder("two") +
                              "/record.json' '" ARC_SOURCE_DIR
                              "/resources/closeout/closeout-record-1.schema.json'";
    EXPECT_EQ(shell(check).code, 0) << shell(check).text;
}

TEST_F(CloseoutCommand, OwedCalibrationsComeFromTheCareRecords) {
    {
        auto book = storage::openLogbook(path(), storage::OpenMode::ReadWrite, clock, random);
        CareRecord care;
        care.id = test::idOf<CareId>(40);
        care.tool = test::idOf<ToolId>(1);
        care.action = action::electrodeReplace;
        care.at = test::at("2031-03-03T08:05:00+01:00");
        append(**book, {care});
    }
    const json seen = json::parse(run({"--format", "json"}).out);
    // Fibre 3 was made after the electrodes were replaced at 08:05, without a calibration since.
    bool isThere = false;
    for (const json& exception : seen["exceptions"])
        if (exception["kind"] == "calibration_owed") {
            isThere = true;
            EXPECT_EQ(exception["key"], "calibration_owed/S-01/2031-03-03T08:05:00+01:00/1");
        }
    EXPECT_TRUE(isThere) << seen.dump(1);
}

TEST_F(CloseoutCommand, TheWindowsWayGivesTheSameRecords) {
    NoProgress progress;
    const auto workbench = makeWorkbench(path(), clock, random);
    const auto draft = workbench->writeCloseout(test::idOf<JobId>(1), folder("draft"), progress);
    ASSERT_TRUE(draft) << draft.error().sentence();
    // Nobody holds the book for writing.
    EXPECT_FALSE(workbench->issueCloseout(test::idOf<JobId>(1), folder("final"), "Quality office", progress));
    decideAll();
    const auto writer = storage::openLogbook(path(), storage::OpenMode::ReadWrite, clock, random);
    ASSERT_TRUE(writer) << writer.error().sentence();
    const auto issued =
        workbench->issueCloseout(test::idOf<JobId>(1), folder("final"), "Quality office", progress);
    ASSERT_TRUE(issued) << issued.error().sentence();
    EXPECT_EQ((*writer)->issuedRecords(test::idOf<JobId>(1))->size(), 1u);
    EXPECT_NE(workbench->verify(folder("final"), progress)->find("final no. 1"), std::string::npos);
}

TEST_F(CloseoutCommand, ADeviceIsKnownOnceItWasAcceptedByName) {
    ASSERT_EQ(run({"--out", folder("draft")}).code, 0);
    const std::string pem = folder("home") + "/device.pem";
    const auto arcw = [&](std::vector<std::string> arguments) {
        std::ostringstream out, err;
        Environment environment{out, err, clock, random};
        const int code = runArcw(arguments, environment);
        return Answer{code, out.str(), err.str()};
    };
    // The supervisor's laptop.
    ::setenv("ARCWRIGHT_HOME", folder("other").c_str(), 1);
    EXPECT_NE(arcw({"verify", folder("draft")}).out.find("not in your list of known devices"),
              std::string::npos);
    EXPECT_EQ(arcw({"devices", "--accept", pem}).code, 2);
    EXPECT_EQ(arcw({"devices", "--accept", path(), "--name", "Van 3"}).code, 2);
    const Answer accepted = arcw({"devices", "--accept", pem, "--name", "Van 3", "--format", "json"});
    ASSERT_EQ(accepted.code, 0) << accepted.err;
    EXPECT_EQ(json::parse(accepted.out)["known"][0]["name"], "Van 3");
    EXPECT_NE(json::parse(accepted.out)["known"][0]["public_key"], json::parse(accepted.out)["public_key"]);
    EXPECT_NE(arcw({"verify", folder("draft")}).out.find("the known device Van 3"), std::string::npos);
    EXPECT_EQ(arcw({"devices", "--accept", folder("draft"), "--name", "Van three"}).code, 0);
    EXPECT_NE(arcw({"verify", folder("draft")}).out.find("the known device Van three"), std::string::npos);
}

TEST_F(CloseoutCommand, RandomFlippedBitsOfAWholeRecordAreFoundByArcwVerify) {
    ASSERT_EQ(run({"--out", folder("draft")}).code, 0);
    NoProgress progress;
    for (const auto& entry : fs::directory_iterator(folder("draft"))) {
        const std::string bytes = test::contents(entry.path());
        for (int i = 0; i < 100; ++i) {
            std::string changed = bytes;
            const std::uint64_t bit = random.below(bytes.size() * 8);
            changed[bit / 8] = static_cast<char>(changed[bit / 8] ^ (1 << (bit % 8)));
            std::ofstream(entry.path(), std::ios::binary | std::ios::trunc) << changed;
            EXPECT_FALSE(storage::verifyCloseout(folder("draft"), progress))
                << entry.path() << " bit " << bit;
        }
        std::ofstream(entry.path(), std::ios::binary | std::ios::trunc) << bytes;
    }
    EXPECT_TRUE(storage::verifyCloseout(folder("draft"), progress));
}

TEST_F(CloseoutCommand, WrongUseEndsInOneSentence) {
    std::ostringstream out, err;
    Environment environment{out, err, clock, random};
    EXPECT_EQ(runArcw({"closeout", path(), "--job", "nowhere"}, environment), 2);
    EXPECT_NE(err.str().find("no job nowhere in this logbook. It holds HR-B."), std::string::npos)
        << err.str();
    EXPECT_EQ(runArcw({"closeout", folder("missing.arcbook"), "--job", "HR-B"}, environment), 2);
    fs::create_directory(temporary / "photos");
    std::ofstream(temporary / "photos/a.jpg") << "x";
    EXPECT_EQ(run({"--out", folder("photos")}).code, 2);
    EXPECT_EQ(test::contents(temporary / "photos/a.jpg"), "x");
}

}  // namespace
}  // namespace arc::app
