// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/export_xlsx.hpp"

#include <memory>
#include <string>
#include <vector>
#include <xlsxwriter.h>

#include "core/units/instant.hpp"

namespace arc::storage {
namespace {

using namespace closeout;

// The format refuses longer texts (ECMA-376: 32,767 characters in a cell).
constexpr std::size_t mostCellBytes = 32'000;

struct Styles {
    lxw_format* head = nullptr;
    lxw_format* title = nullptr;
    lxw_format* loss = nullptr;
    lxw_format* angle = nullptr;
    lxw_format* time = nullptr;
    lxw_format* bad = nullptr;
};

/// Text that a spreadsheet can show: cut at a character's edge, control characters out.
std::string cellText(std::string_view text) {
    std::string safe;
    for (const char c : text.substr(0, mostCellBytes))
        if (static_cast<unsigned char>(c) >= 0x20 || c == '\n' || c == '\t') safe += c;
    while (text.size() > mostCellBytes && !safe.empty() &&
           (static_cast<unsigned char>(safe.back()) & 0xC0) == 0x80)
        safe.pop_back();
    return safe;
}

/// A sheet with a frozen, filtered header row. Columns are filled from left to right.
class Sheet {
  public:
    struct Column {
        const char* name;
        double width;
    };

    Sheet(lxw_workbook* book, const char* name, const Styles& styles, const std::vector<Column>& columns)
        : m_sheet(workbook_add_worksheet(book, name)), m_styles(styles), m_columns(columns.size()) {
        lxw_col_t column = 0;
        for (const Column& c : columns) {
            worksheet_set_column(m_sheet, column, column, c.width, nullptr);
            worksheet_write_string(m_sheet, 0, column, c.name, styles.head);
            ++column;
        }
        worksheet_freeze_panes(m_sheet, 1, 0);
        worksheet_repeat_rows(m_sheet, 0, 0);
        worksheet_set_landscape(m_sheet);
        worksheet_fit_to_pages(m_sheet, 1, 0);
    }

    void text(std::string_view value, lxw_format* format = nullptr) {
        if (value.empty()) {
            ++m_column;
            return;
        }
        // write_string, never write: a text that begins with "=" stays a text.
        note(worksheet_write_string(m_sheet, m_row, m_column++, cellText(value).c_str(), format));
    }
    void number(double value, lxw_format* format = nullptr) {
        note(worksheet_write_number(m_sheet, m_row, m_column++, value, format));
    }
    void loss(double value) { number(value, m_styles.loss); }
    void loss(const std::optional<Loss>& value) { value ? loss(decibels(*value)) : skip(); }
    void loss(const std::optional<double>& value) { value ? loss(*value) : skip(); }
    void angle(const std::optional<Angle>& value) {
        value ? number(degrees(*value), m_styles.angle) : skip();
    }
    template <class T>
    void count(const std::optional<T>& value) {
        value ? number(static_cast<double>(*value)) : skip();
    }
    void time(const Instant& value) {
        const CalendarTime parts = calendar(value);
        lxw_datetime when{parts.year, parts.month,  parts.day,
                          parts.hour, parts.minute, static_cast<double>(parts.second)};
        note(worksheet_write_datetime(m_sheet, m_row, m_column++, &when, m_styles.time));
    }
    void time(const std::optional<Instant>& value) { value ? time(*value) : skip(); }
    void skip() { ++m_column; }
    void nextRow() {
        ++m_row;
        m_column = 0;
    }
    /// After the last row.
    void finish() {
        if (m_row > 1) worksheet_autofilter(m_sheet, 0, 0, m_row - 1, static_cast<lxw_col_t>(m_columns - 1));
    }
    [[nodiscard]] lxw_error worst() const { return m_worst; }

  private:
    void note(lxw_error error) {
        if (error != LXW_NO_ERROR) m_worst = error;
    }
    lxw_worksheet* m_sheet;
    const Styles& m_styles;
    std::size_t m_columns;
    lxw_row_t m_row = 1;
    lxw_col_t m_column = 0;
    lxw_error m_worst = LXW_NO_ERROR;
};

Styles stylesOf(lxw_workbook* book) {
    Styles styles;
    styles.head = workbook_add_format(book);
    format_set_bold(styles.head);
    format_set_bottom(styles.head, LXW_BORDER_MEDIUM);
    format_set_bottom_color(styles.head, 0x0A4F57);
    format_set_font_color(styles.head, 0x0A4F57);
    format_set_text_wrap(styles.head);
    format_set_align(styles.head, LXW_ALIGN_VERTICAL_TOP);
    styles.title = workbook_add_format(book);
    format_set_bold(styles.title);
    styles.loss = workbook_add_format(book);
    format_set_num_format(styles.loss, "0.000");
    styles.angle = workbook_add_format(book);
    format_set_num_format(styles.angle, "0.00");
    styles.time = workbook_add_format(book);
    format_set_num_format(styles.time, "yyyy-mm-dd hh:mm:ss");
    styles.bad = workbook_add_format(book);
    format_set_bold(styles.bad);
    format_set_font_color(styles.bad, 0x92200C);
    return styles;
}

lxw_error writeSummary(lxw_workbook* book, const Styles& styles, const Record& record) {
    Sheet sheet(book, "Summary", styles, {{"What", 34}, {"Value", 44}});
    const auto row = [&](std::string_view what, auto&& value) {
        sheet.text(what, styles.title);
        value();
        sheet.nextRow();
    };
    const auto words = [&](std::string_view what, std::string_view text) {
        row(what, [&] { sheet.text(text); });
    };
    const auto count = [&](std::string_view what, double value) { row(what, [&] { sheet.number(value); }); };
    const auto loss = [&](std::string_view what, const auto& value) {
        row(what, [&] { sheet.loss(value); });
    };
    words("Job", record.job.label);
    words("Title", record.job.title);
    words("State", record.state == RecordState::Final ? "Final" : "DRAFT");
    if (record.number) count("Number", *record.number);
    if (record.supersedes) count("Supersedes number", *record.supersedes);
    if (!record.issuedBy.empty()) words("Issued by", record.issuedBy);
    row("Made at", [&] { sheet.time(record.madeAt); });
    words("Made at, with offset", toIso(record.madeAt));
    words("Verdict", title(record.verdict));
    words("Journal head", record.journalHead);
    words("Acceptance rule", record.job.rule.name);
    loss("Limit per splice, dB", decibels(record.job.rule.perSplice));
    loss("Limit of the mean, dB", decibels(record.job.rule.average));
    loss("Ceiling, dB", decibels(record.job.rule.ceiling));
    count("Splices", static_cast<double>(record.averages.splices));
    count("Attempts", static_cast<double>(record.averages.attempts));
    count("Right the first time", static_cast<double>(record.averages.firstTime));
    if (record.plan) count("Planned", record.plan->planned);
    if (record.plan) count("Planned and spliced", record.plan->spliced);
    loss("Mean loss, dB (estimated)", record.averages.meanDb);
    loss("Median loss, dB", record.averages.medianDb);
    loss("Standard deviation, dB", record.averages.sdDb);
    loss("Worst loss, dB", record.averages.worst);
    count("Voided readings, left out", static_cast<double>(record.voided));
    count("Exceptions", static_cast<double>(record.exceptions.size()));
    count("Exceptions without disposition", static_cast<double>(openExceptions(record)));
    for (const SpanSection& span : record.spans) {
        const std::string of = span.kind == SpanKind::WholeJob ? ""
                               : span.kind == SpanKind::Rest   ? " of what is on no span"
                                                               : " of span " + span.label;
        if (!of.empty()) loss("Mean loss" + of + ", dB", span.meanDb);
        for (const LinkBudget& budget : span.budgets) {
            const std::string at = of + " at " + std::to_string(budget.wavelengthNm) + " nm, dB";
            loss("Link budget allowed" + at, budget.allowedDb);
            loss("Link loss as spliced" + at, budget.asSplicedDb);
        }
        words("Link budget" + of, span.budgetNote);
    }
    return sheet.worst();
}

lxw_error writeSplices(lxw_workbook* book, const Styles& styles, const Record& record) {
    Sheet sheet(book, "Splices", styles,
                {{"Closure", 14},      {"Fibre A", 10},  {"Colour A", 16},        {"Fibre B", 10},
                 {"Colour B", 16},     {"Loss, dB", 9},  {"Verdict", 12},         {"Attempts", 9},
                 {"Time (local)", 19}, {"Splicer", 12},  {"Groove", 8},           {"Fibres per arc", 8},
                 {"Arc count", 10},    {"Cleaver", 12},  {"Cleave left, deg", 9}, {"Cleave right, deg", 9},
                 {"Mode", 16},         {"Operator", 14}, {"Flags", 26},           {"Note", 36}});
    const auto fibre = [&](const FibreEnd& end) {
        end.number ? sheet.number(*end.number) : sheet.text(end.name);
        std::string colour = end.place ? std::string(word(end.place->fibreLook.colour)) : "";
        if (end.place && end.place->fibreLook.tracerMarks > 0) colour += " with tracer";
        sheet.text(colour);
    };
    for (const ClosureSection& section : record.closures) {
        for (const Splice& splice : section.splices) {
            const Attempt& made = splice.final();
            sheet.text(section.label);
            fibre(splice.a);
            fibre(splice.b);
            sheet.loss(decibels(made.loss));
            sheet.text(title(splice.verdict),
                       splice.verdict == SpliceVerdict::Accepted ? nullptr : styles.bad);
            sheet.number(static_cast<double>(splice.attempts.size()));
            sheet.time(made.at);
            sheet.text(record.equipment[made.splicer].tool.label);
            sheet.number(made.channel);
            sheet.number(made.channels);
            sheet.count(made.counter ? std::optional(made.counter->value) : std::nullopt);
            sheet.text(made.cleaver ? record.equipment[*made.cleaver].tool.label : "");
            sheet.angle(made.cleaveLeft);
            sheet.angle(made.cleaveRight);
            sheet.text(made.mode);
            sheet.text(made.operatorName);
            std::string flags;
            for (const ExceptionKind kind : splice.flags)
                flags += (flags.empty() ? "" : "; ") + std::string(title(kind));
            sheet.text(flags);
            sheet.text(made.note);
            sheet.nextRow();
        }
    }
    sheet.finish();
    return sheet.worst();
}

lxw_error writeExceptions(lxw_workbook* book, const Styles& styles, const Record& record) {
    Sheet sheet(book, "Exceptions", styles,
                {{"Kind", 22},
                 {"Where", 14},
                 {"What", 70},
                 {"Splices", 9},
                 {"Disposition", 14},
                 {"Reason", 40},
                 {"By", 16},
                 {"When (local)", 19},
                 {"Key", 44}});
    for (const Exception& exception : record.exceptions) {
        sheet.text(title(exception.kind));
        sheet.text(exception.where);
        sheet.text(exception.what);
        sheet.number(static_cast<double>(exception.splices));
        if (exception.disposition) {
            sheet.text(exception.disposition->disposition);
            sheet.text(exception.disposition->reason);
            sheet.text(exception.disposition->by);
            sheet.time(exception.disposition->at);
        } else {
            sheet.text("open", styles.bad);
            for (int i = 0; i < 3; ++i) sheet.skip();
        }
        sheet.text(exception.key);
        sheet.nextRow();
    }
    sheet.finish();
    return sheet.worst();
}

lxw_error writeEquipment(lxw_workbook* book, const Styles& styles, const Record& record) {
    Sheet sheet(book, "Equipment", styles,
                {{"Tool", 12},
                 {"Nickname", 14},
                 {"Attempts here", 10},
                 {"First use", 19},
                 {"Last use", 19},
                 {"Arcs since electrodes", 12},
                 {"Arcs since groove clean", 12},
                 {"Arcs since calibration", 12},
                 {"Care", 20},
                 {"When", 19},
                 {"By", 14},
                 {"Detail", 50}});
    const auto since = [&](const std::optional<ArcsSince>& count) {
        if (count && count->certainty == kit::Certainty::AtLeast)
            sheet.text("at least " + std::to_string(count->arcs));
        else
            sheet.count(count ? std::optional(count->arcs) : std::nullopt);
    };
    for (const Equipment& item : record.equipment) {
        std::vector<CareLine> lines = item.before;
        lines.insert(lines.end(), item.during.begin(), item.during.end());
        if (lines.empty()) lines.emplace_back();
        for (const CareLine& line : lines) {
            sheet.text(item.tool.label);
            sheet.text(item.tool.nickname);
            sheet.number(static_cast<double>(item.splicesHere));
            sheet.time(item.firstUse);
            sheet.time(item.lastUse);
            since(item.sinceElectrodes);
            since(item.sinceGrooveClean);
            since(item.sinceCalibration);
            if (!line.action.empty()) {
                sheet.text(line.action);
                sheet.time(line.at);
                sheet.text(line.by);
                sheet.text(line.detail);
            }
            sheet.nextRow();
        }
    }
    sheet.finish();
    return sheet.worst();
}

lxw_error writeMeasured(lxw_workbook* book, const Styles& styles, const Record& record) {
    Sheet sheet(book, "Measured losses", styles,
                {{"Closure", 14},
                 {"Fibre", 12},
                 {"Wavelength, nm", 11},
                 {"A to B, dB", 10},
                 {"B to A, dB", 10},
                 {"Two-way mean, dB", 10},
                 {"Kind", 14},
                 {"Time (local)", 19},
                 {"Instrument", 18},
                 {"Note", 36}});
    const auto row = [&](const ClosureSection& section, std::string_view fibre, const Measurement& m) {
        sheet.text(section.label);
        sheet.text(fibre);
        sheet.number(m.wavelengthNm);
        sheet.loss(m.aToB);
        sheet.loss(m.bToA);
        sheet.loss(m.twoWayDb());
        sheet.text(m.twoWayDb() ? "two-way" : "one-way only", m.twoWayDb() ? nullptr : styles.bad);
        sheet.time(m.at);
        sheet.text(m.instrument);
        sheet.text(m.note);
        sheet.nextRow();
    };
    for (const ClosureSection& section : record.closures) {
        for (const Splice& splice : section.splices)
            for (const Measurement& m : splice.measured)
                row(section, splice.a.name.empty() ? splice.b.name : splice.a.name, m);
        for (const auto& [fibre, m] : section.loose) row(section, fibre, m);
    }
    sheet.finish();
    return sheet.worst();
}

lxw_error writeAttachments(lxw_workbook* book, const Styles& styles, const Record& record) {
    Sheet sheet(book, "Photos and notes", styles,
                {{"File beside this workbook", 40},
                 {"Name", 30},
                 {"Media type", 16},
                 {"Belongs to", 50},
                 {"Bytes", 12},
                 {"SHA-256", 68}});
    for (const AttachedFile& file : record.attachments) {
        for (const auto* text : {&file.file, &file.name, &file.mediaType, &file.where}) sheet.text(*text);
        sheet.number(static_cast<double>(file.bytes));
        sheet.text(file.sha256);
        sheet.nextRow();
    }
    sheet.finish();
    return sheet.worst();
}

}  // namespace

Result<void> writeRecordXlsx(const Record& record, const std::filesystem::path& file) {
    // Temporary parts go beside the file: the system's own folder may be small or readable by others.
    std::string folder = file.parent_path().string();
    lxw_workbook_options options{};
    options.tmpdir = folder.data();
    lxw_workbook* book = workbook_new_opt(file.c_str(), &options);
    if (book == nullptr) return fail(ProblemCode::Unavailable, "the workbook cannot be made", file.string());
    std::string title = "Closeout record " + record.job.label;
    lxw_doc_properties properties{};
    properties.title = title.data();
    // Not the present: the same record gives the same file.
    properties.created = static_cast<time_t>(record.madeAt.ms / 1000);
    workbook_set_properties(book, &properties);
    const Styles styles = stylesOf(book);
    lxw_error worst = LXW_NO_ERROR;
    for (auto* part :
         {writeSummary, writeSplices, writeExceptions, writeEquipment, writeMeasured, writeAttachments})
        if (const lxw_error error = part(book, styles, record); error != LXW_NO_ERROR) worst = error;
    if (const lxw_error closed = workbook_close(book); closed != LXW_NO_ERROR) worst = closed;
    if (worst != LXW_NO_ERROR)
        return fail(ProblemCode::Unavailable,
                    std::string("the workbook cannot be written: ") + lxw_strerror(worst), file.string());
    return {};
}

}  // namespace arc::storage
