// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/help_pages.hpp"

#include <QCoreApplication>

namespace arc::ui {
namespace {

constexpr HelpLine screens[] = {
    {HelpKind::Text, QT_TRANSLATE_NOOP("help", "One logbook, six screens. Each answers one question.")},
    {HelpKind::Item,
     QT_TRANSLATE_NOOP("help", "Today, F2: which fibre is next, and is this loss good enough?")},
    {HelpKind::Item, QT_TRANSLATE_NOOP("help", "Kit, F3: how worn is each splicer, cleaver and stripper?")},
    {HelpKind::Item, QT_TRANSLATE_NOOP("help", "Care, F4: what is due, and when can this crew do it?")},
    {HelpKind::Item,
     QT_TRANSLATE_NOOP("help", "Drift, F5: did a machine change, since when, and which part?")},
    {HelpKind::Item,
     QT_TRANSLATE_NOOP("help", "Closeout, F6: is the job complete, and what does the client get?")},
    {HelpKind::Item,
     QT_TRANSLATE_NOOP("help", "Logbook, F7: what was written, when, by whom and from where?")},
    {HelpKind::Text,
     QT_TRANSLATE_NOOP(
         "help",
         "Ctrl+K finds every action, tool and job by a few letters. Ctrl+Z takes back what was "
         "entered in this sitting. The foot of the rail says when the last entry was on disk: what is "
         "not shown as saved there is not saved.")},
};

constexpr HelpLine pad[] = {
    {HelpKind::Text,
     QT_TRANSLATE_NOOP(
         "help",
         "The next fibre is chosen already. Type the digits the splicer shows: 4 is 0.04 dB, 12 is "
         "0.12. Enter saves and goes on. A comma or a point means dB as written.")},
    {HelpKind::Text,
     QT_TRANSLATE_NOOP(
         "help",
         "On a ribbon, Space goes to the next fibre and one Enter saves them all; or paste the losses "
         "of the whole ribbon.")},
    {HelpKind::Item, QT_TRANSLATE_NOOP("help", "accept: within the limit of the job.")},
    {HelpKind::Item, QT_TRANSLATE_NOOP("help", "re-splice: over the limit. R begins the next attempt.")},
    {HelpKind::Item,
     QT_TRANSLATE_NOOP(
         "help",
         "high: over the limit after as many attempts as the rule asks for. K keeps it with a note; "
         "above the ceiling nothing is kept.")},
    {HelpKind::Text,
     QT_TRANSLATE_NOOP("help",
                       "Digits on a fibre that has a loss correct it; V voids it with a reason. Nothing is "
                       "overwritten: the book keeps every version.")},
};

constexpr HelpLine care[] = {
    {HelpKind::Text,
     QT_TRANSLATE_NOOP(
         "help",
         "What is due stands in four queues, named by when a crew can do it: Hold, before the next "
         "splice; Next gap, before the next closure; Shift end; Bench day, at the depot.")},
    {HelpKind::Text,
     QT_TRANSLATE_NOOP(
         "help",
         "Each item says why, since when, on what it is based and what happens if it is left. It goes "
         "away by doing the work, never by a tick. A hold can be overridden with a name and a reason; "
         "that is written into the record.")},
    {HelpKind::Text,
     QT_TRANSLATE_NOOP(
         "help",
         "A care card leads through the work step by step, gentle before drastic, cautions first. It "
         "can be paused and taken up again.")},
    {HelpKind::Heading, QT_TRANSLATE_NOOP("help", "Before you begin")},
    {HelpKind::Caution,
     QT_TRANSLATE_NOOP("help", "Electrodes carry high voltage: switch off and unplug before you reach in.")},
    {HelpKind::Caution,
     QT_TRANSLATE_NOOP("help",
                       "An arc ignites gas: test the air in manholes and pits. Let alcohol dry first.")},
    {HelpKind::Caution,
     QT_TRANSLATE_NOOP("help",
                       "Fibre ends are glass needles: eye protection, shard bin, no food at the bench.")},
    {HelpKind::Caution,
     QT_TRANSLATE_NOOP("help", "Treat every fibre as live: never look into an end or a connector.")},
    {HelpKind::Text,
     QT_TRANSLATE_NOOP("help", "Local codes, the maker's manual and licensed practice go before any card.")},
};

constexpr HelpLine closeout[] = {
    {HelpKind::Text,
     QT_TRANSLATE_NOOP(
         "help",
         "The screen compares what was planned with what was spliced and lists every exception: over "
         "limit, missing, calibration owed, hold overridden, corrected afterwards. Each needs a "
         "disposition with a name and a reason before a final record can be issued.")},
    {HelpKind::Text,
     QT_TRANSLATE_NOOP(
         "help",
         "The record is a folder: pages, tables, data, a manifest that names every file with its "
         "SHA-256, and a signature over the manifest. A final record is never changed; a later one "
         "supersedes it.")},
    {HelpKind::Heading, QT_TRANSLATE_NOOP("help", "How a stranger verifies it")},
    {HelpKind::Item,
     QT_TRANSLATE_NOOP("help",
                       "With this program: Verify a record on the Closeout screen, or: arcw verify FOLDER")},
    {HelpKind::Item,
     QT_TRANSLATE_NOOP(
         "help",
         "Without it: the SHA-256 of each file must be the one in manifest.json (sha256sum), the "
         "signature manifest.sig must fit manifest.json (openssl), and the key must be the one the "
         "crew gave: device.pem. The three commands are in the README.")},
    {HelpKind::Text,
     QT_TRANSLATE_NOOP("help",
                       "Whoever receives a record should get the crew's device.pem from the crew itself, not "
                       "together with the record.")},
};

constexpr HelpLine handover[] = {
    {HelpKind::Text,
     QT_TRANSLATE_NOOP(
         "help",
         "Laptops without a network hand over work in a satchel: one file on a stick. It holds the "
         "journal of the logbook, sealed and signed by the device that packed it.")},
    {HelpKind::Item,
     QT_TRANSLATE_NOOP("help", "Pack: on the laptop that has the work. A passphrase keeps strangers out.")},
    {HelpKind::Item,
     QT_TRANSLATE_NOOP(
         "help",
         "Take in: on the other laptop. The first time, compare the key of the sender by voice or on "
         "paper, then accept the device.")},
    {HelpKind::Text,
     QT_TRANSLATE_NOOP(
         "help",
         "Satchels may come in any order and more than once: nothing is lost and nothing is doubled. "
         "Where two crews changed the same thing, the later version shows, both are kept, and the pair "
         "is listed for a person to look at.")},
};

constexpr HelpPage pages[] = {
    {"screens", QT_TRANSLATE_NOOP("help", "The screens"), screens},
    {"pad", QT_TRANSLATE_NOOP("help", "The loss pad"), pad},
    {"care", QT_TRANSLATE_NOOP("help", "Care and safety"), care},
    {"closeout", QT_TRANSLATE_NOOP("help", "Closeout and verifying"), closeout},
    {"handover", QT_TRANSLATE_NOOP("help", "Handover"), handover},
};

}  // namespace

std::span<const HelpPage> helpPages() {
    return pages;
}

QString helpWords(const char* english) {
    return QCoreApplication::translate("help", english);
}

}  // namespace arc::ui
