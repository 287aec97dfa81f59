<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Fibre</name>
    <message>
        <source>blue</source>
        <translation>blau</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>orange</translation>
    </message>
    <message>
        <source>green</source>
        <translation>grün</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>braun</translation>
    </message>
    <message>
        <source>slate</source>
        <translation>grau</translation>
    </message>
    <message>
        <source>white</source>
        <translation>weiß</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rot</translation>
    </message>
    <message>
        <source>black</source>
        <translation>schwarz</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>gelb</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violett</translation>
    </message>
    <message>
        <source>rose</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>aqua</source>
        <translation>türkis</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>türkis</translation>
    </message>
    <message>
        <source>natural</source>
        <translation>natur</translation>
    </message>
    <message>
        <source>lime</source>
        <translation>hellgrün</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>grau</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n tracer mark(s)</source>
        <translation>
            <numerusform>%1, %n Ringmarke</numerusform>
            <numerusform>%1, %n Ringmarken</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Finder</name>
    <message>
        <source>splicer</source>
        <translation>Spleißgerät</translation>
    </message>
    <message>
        <source>cleaver</source>
        <translation>Trenngerät</translation>
    </message>
    <message>
        <source>stripper</source>
        <translation>Absetzgerät</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>Dirt in one groove of 12, +0.02 dB, growing in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same, +0.04 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same, +0.08 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc calibration off by 0.01 dB, 12 fibres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same, single fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cleaver that cuts worse and worse, 12 fibres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A lot of fibre that splices 0.015 dB worse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electrodes past their best, 12 fibres</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QDialog</name>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Add a tool</source>
        <translation>Gerät hinzufügen</translation>
    </message>
    <message>
        <source>The label is what the crew and the files call it. It cannot be given twice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass splicer</source>
        <translation>Massenspleißgerät</translation>
    </message>
    <message>
        <source>Single-fibre splicer</source>
        <translation>Einzelfaser-Spleißgerät</translation>
    </message>
    <message>
        <source>Cleaver</source>
        <translation>Trenngerät</translation>
    </message>
    <message>
        <source>Ribbon stripper</source>
        <translation>Bändchen-Absetzgerät</translation>
    </message>
    <message>
        <source>Label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nickname</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grooves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc control</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibrated by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>adjusts itself at each splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade positions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade heights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a tool of this label in the kit already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the counter of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the tool&apos;s own counter shows now. What was written before stays in the book.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counter shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why: counter replaced, typed wrong, …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QFileDialog</name>
    <message>
        <source>Folder</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Screen</name>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Pflege</translation>
    </message>
    <message>
        <source>Drift</source>
        <translation>Drift</translation>
    </message>
    <message>
        <source>Closeout</source>
        <translation>Abschluss</translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation>Bordbuch</translation>
    </message>
</context>
<context>
    <name>arc::print</name>
    <message>
        <source>Every splice is within the rule; nothing is out of order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 exception, decided on with name and reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 exceptions, all decided on with name and reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is spliced yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 exception waits for a decision.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 exceptions wait for a decision.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A splice is above the ceiling, or an exception was rejected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draft, not issued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record no. %1, issued by %2, supersedes no. %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record no. %1, issued by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In this record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 no. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, draft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 planned are there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no splice plan, completeness not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right the first time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %, %2 attempts in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean estimated loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit %1 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worst estimated loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit %1, ceiling %2 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acceptance rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sample, not a contract&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the contract</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two-way mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>splicer&apos;s estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 voided readings left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Journal head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This paper belongs to a folder with the same record as data. manifest.json holds the SHA-256 of each file, manifest.sig the Ed25519 signature of the device that made it. &quot;arcw verify&quot; checks both; so do sha256sum and openssl.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signing says: the splices of %1 were made as listed, and the exceptions and their dispositions were read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crew: name and signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quality assurance: name and signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Customer: name and signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated loss, dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>splices in order of time; triangles are above the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>splices in order of time; strokes from lowest to highest, the line is their mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaver</source>
        <translation type="unfinished">Trenngerät</translation>
    </message>
    <message>
        <source>Stripper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass splicer</source>
        <translation type="unfinished">Massenspleißgerät</translation>
    </message>
    <message>
        <source>Single-fibre splicer</source>
        <translation type="unfinished">Einzelfaser-Spleißgerät</translation>
    </message>
    <message>
        <source>No care of this tool is recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care</source>
        <translation type="unfinished">Pflege</translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>during the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 earlier ones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>listed in record.json and record.xlsx</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 + tracer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: measured losses, dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A to B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>B to A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two-way mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one-way only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Summary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spliced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-spliced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean, dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worst, dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Losses: mean %1, median %2, standard deviation %3 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Losses in the order they were made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exceptions</source>
        <translation type="unfinished">Ausnahmen</translation>
    </message>
    <message>
        <source>None.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disposition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tools and their care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 attempts here, %3 to %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arcs at last use since electrodes: %1, since V-groove clean: %2, since arc calibration: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration owed from %1 to %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Link budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wavelength, nm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre, dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splices, dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connectors, dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total, dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>allowed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as spliced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 km of fibre, splices: %2, connectors: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss, dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splicer</source>
        <translation type="unfinished">Spleißgerät</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Journal head %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DRAFT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At %1 nm, splices measured in both directions: %2, estimated: %3.</source>
        <translation>Bei %1 nm in beiden Richtungen gemessene Spleiße: %2, geschätzt: %3.</translation>
    </message>
    <message>
        <source>Span %1, %2 to %3</source>
        <translation>Strecke %1, %2 bis %3</translation>
    </message>
    <message>
        <source>%1. Splices: %2.</source>
        <translation>%1. Spleiße: %2.</translation>
    </message>
    <message>
        <source>Average %1 dB, agreed %2 dB.</source>
        <translation>Mittel %1 dB, vereinbart %2 dB.</translation>
    </message>
    <message>
        <source>Photos and notes</source>
        <translation type="unfinished">Fotos und Notizen</translation>
    </message>
    <message>
        <source>File beside this paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Belongs to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bytes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SHA-256 begins</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::print::Sheet</name>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::print::Table</name>
    <message>
        <source>%1, continued</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui</name>
    <message>
        <source>%1 of the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleave angles, worst end of an arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>losses, mean of an arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>losses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 dB lately</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, baseline %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all grooves together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level of the losses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>cleave angles, summed up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove or clamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>electrodes</source>
        <translation>Elektroden</translation>
    </message>
    <message>
        <source>calibration</source>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>cleaver</source>
        <translation>Trenngerät</translation>
    </message>
    <message>
        <source>fibre lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove %1 alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each groove alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleave angles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>re-splice rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one splice alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimate against measurement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>care done, watching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recovered</source>
        <translation>erholt</translation>
    </message>
    <message>
        <source>dismissed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it helped: recovered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it helped in part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worse since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too early to say</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 arcs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arc %1 (%2–%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single-fibre splicer</source>
        <translation>Einzelfaser-Spleißgerät</translation>
    </message>
    <message>
        <source>mass splicer, %1 grooves</source>
        <translation>Massenspleißgerät, %1 Nuten</translation>
    </message>
    <message>
        <source>ribbon stripper</source>
        <translation>Bändchen-Absetzgerät</translation>
    </message>
    <message>
        <source>%1 of about %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none in the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done %1, results not written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done, results not written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>owed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>owed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height %1 of %2, position %3 of %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; last height, have a blade ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; used up, a new blade is due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steady</source>
        <translation>stabil</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>beobachten</translation>
    </message>
    <message>
        <source>drifting</source>
        <translation>driftet</translation>
    </message>
    <message>
        <source>learning</source>
        <translation>lernt noch</translation>
    </message>
    <message>
        <source>groove clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clamp clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lens clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stabilised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diagnostics</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaver clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blade clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blade turned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blade raised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stripper clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved or weather</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the blade to its next height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilise electrodes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>helped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>helped in part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too early to tell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> for %1 fibres of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>adjusts itself; calibrated%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>valid%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::ActionWords</name>
    <message>
        <source>&quot;%1&quot; means</source>
        <translation>„%1“ bedeutet</translation>
    </message>
    <message>
        <source>not said: its rows are set aside</source>
        <translation>nicht gesagt: seine Zeilen werden beiseitegelegt</translation>
    </message>
</context>
<context>
    <name>arc::ui::AttachmentSheet</name>
    <message>
        <source>%1 KB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 MB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos and notes</source>
        <translation>Fotos und Notizen</translation>
    </message>
    <message>
        <source>Attached to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is attached yet. P adds a photo, N writes a note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write; Ctrl+Enter saves it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add photo  P</source>
        <translation>Foto dazu  P</translation>
    </message>
    <message>
        <source>Write note  N</source>
        <translation>Notiz  N</translation>
    </message>
    <message>
        <source>Save out  S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back  Del</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close  Esc</source>
        <translation>Schließen  Esc</translation>
    </message>
    <message>
        <source>This picture cannot be shown here. S saves it out as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture %1, %2 by %3 pixels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save out into</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved out as %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::BackupsPanel</name>
    <message>
        <source>Make a copy now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a logbook of the chosen copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copies at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>megabytes at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1   %2   %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no copy yet. One is made by itself after the first entries; it can be made while you work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies are made by themselves while you work, in %1. Put one of them on a stick from time to time: a copy on the same disk does not help when the disk fails.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copying…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copying the logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder for the new logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checking the copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Making a logbook of a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy is sound; the new logbook is %1. Open it with arcwright. This one stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::BaselineBar</name>
    <message>
        <source>Baseline from arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Baseline to arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why, for the journal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason for moving the baseline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
</context>
<context>
    <name>arc::ui::BladeGrid</name>
    <message>
        <source>Blade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height %1 of %2, position %3 of %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height %1, position %2: %3 cleaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, in use now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::BookBar</name>
    <message>
        <source>State of the logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is readable, and rescue</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::CardEditor</name>
    <message>
        <source>Edit the card: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Version %1 is in force. What you adopt is checked first; old records keep the version they were done with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text of the card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check and adopt  Ctrl+Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it as it is  Esc</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::CardRunner</name>
    <message>
        <source>Back  B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause  Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About %1 minutes. Read this first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have these at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · round %1 of at most %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its first end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its other end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swab %1, %2. A used end is never used again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes, good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time gone by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start %1 minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time is over, go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time is over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All steps are through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tried, not reached. What comes next stays in the queue.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reached what it was for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now compulsory: %1. It is in the queue.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swab ends used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done on the way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gentler care not tried first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Because</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::CareDesk</name>
    <message>
        <source>Looking at what is due</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::CarePage</name>
    <message>
        <source>Care</source>
        <translation>Pflege</translation>
    </message>
    <message>
        <source>Looking at the tools…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>Nichts fällig</translation>
    </message>
    <message>
        <source>Change the limits of care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put aside, the shipped one is used: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
</context>
<context>
    <name>arc::ui::CauseBars</name>
    <message>
        <source>Likely causes</source>
        <translation>Wahrscheinliche Ursachen</translation>
    </message>
</context>
<context>
    <name>arc::ui::ChartColumn</name>
    <message>
        <source>Charts</source>
        <translation>Diagramme</translation>
    </message>
    <message>
        <source>Read-out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arc %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean %1, highest %2 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level %1 of the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove %1 fullest, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arcs %1 to %2 of %3 · arrows move, + and − zoom, 0 shows all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibration owed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::ChartMarks</name>
    <message>
        <source>arc</source>
        <translation>Lichtbogen</translation>
    </message>
    <message>
        <source>began</source>
        <translation>begann</translation>
    </message>
    <message>
        <source>signal</source>
        <translation>Signal</translation>
    </message>
    <message>
        <source>calibration owed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::ChartView</name>
    <message>
        <source>baseline</source>
        <translation>Grundstrecke</translation>
    </message>
</context>
<context>
    <name>arc::ui::CloseoutPage</name>
    <message>
        <source>Closeout</source>
        <translation>Abschluss</translation>
    </message>
    <message>
        <source>No job yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A job that was spliced is closed out here: what is complete, what is out of order and who decided about it, and the record a stranger can verify.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a job on Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is complete, what is out of order, and the record for the client</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looking…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Final record no. %1 was issued on %2 by %3; a later one supersedes it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record no. %1 was issued twice, on two laptops. Issue the record again: it gets no. %2 and supersedes both.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::ColumnKeySheet</name>
    <message>
        <source>comma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bar |</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>point, 0.03</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comma, 0,03</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ISO, 2031-04-03</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day first, 03.04.2031</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>month first, 04/03/2031</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>year first, 2031/4/3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day or month first?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mdB, thousandths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dB or mdB?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>like +01:00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none; or names with commas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns are separated by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dates are written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offset of times without one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Losses are in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time of day, if apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Losses, a column a groove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First rows as they would be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the key as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a name, to use it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import with this key  Ctrl+Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Key as a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back  Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose, or = the same everywhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none, go by names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the same column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the saved key &quot;%2&quot; fits; look at the rows and press Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: which of its columns holds what? Matched by their names, so look it over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dates can be read in two ways: say whether the day or the month stands first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The times do not say how far they are from UTC: give the offset of the place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The losses are large whole numbers: say whether they are dB or thousandths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of the first %2 rows land</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file has no column &quot;%1&quot;; write &quot;= %1&quot; if every row is to say so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The offset &quot;%1&quot; is not like +01:00 or Z.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is taken in before it is said whether day or month stands first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is taken in before the offset from UTC is said, like +01:00.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is taken in before it is said whether losses are dB or mdB.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder for the key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The key is in %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::Comb</name>
    <message>
        <source>The groove</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>The %n grooves</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>no groove stands out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove %1: no readings yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove %1, %2: %3 dB in the baseline, %4 dB now (n = %5), alone %6 dB</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::ConditionPanel</name>
    <message>
        <source>open for writing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open for reading only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>damaged, open for reading only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is readable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the whole logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rescue what is readable into a new logbook…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A check walks through every page of the file, and through the journal with its hashes; it may take a while and can be stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checking…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checking the logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Damage was found. Nothing more is written into this logbook.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every page is whole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder for the rescued logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rescuing…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rescuing the logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rescued into %1: %2 entries as they were, %3 in part, %4 lost. Open it with arcwright; the damaged one was not touched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not whole:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::DevicesPanel</name>
    <message>
        <source>this laptop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>not accepted</source>
        <translation>nicht angenommen</translation>
    </message>
    <message>
        <source>Each laptop signs with a key of its own. Who takes in its satchels compares the key by phone once and gives the laptop a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The key of this laptop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laptops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accept or rename  N</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accept the chosen laptop, or rename it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This laptop needs no name here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the laptop with the key %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Satchels of %1 are taken in from now on.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::DoneAside</name>
    <message>
        <source>Lately done, and whether it helped</source>
        <translation>Zuletzt getan, und ob es half</translation>
    </message>
</context>
<context>
    <name>arc::ui::DriftPage</name>
    <message>
        <source>No losses to look at yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter splices on Today, or import a splice log: after 60 arcs of a splicer its charts begin to speak. They compare every machine with its own past.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken up again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next splicer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous splicer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the next signal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the signal before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the care the signal calls for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dismiss the signal with a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the readings behind the charts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the baseline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the other charts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the charts as pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the numbers of the charts as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show all arcs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drift</source>
        <translation>Drift</translation>
    </message>
    <message>
        <source>Looking at the losses…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one groove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 grooves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one false signal per %1 arcs, all charts together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>baseline arcs %1–%2, shaded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no baseline yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dismiss: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The signal is put aside and stays in the book with your reason. The charts go on watching; the reasons show a supervisor how often the budget cries wolf.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre or cable of this job, not the machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>training splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>already looked at, nothing found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the charts as SVG and PNG</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::DueDetail</name>
    <message>
        <source>based on</source>
        <translation>beruht auf</translation>
    </message>
    <message>
        <source>since</source>
        <translation>seit</translation>
    </message>
    <message>
        <source>if not</source>
        <translation>sonst</translation>
    </message>
    <message>
        <source>takes</source>
        <translation>dauert</translation>
    </message>
    <message>
        <source>needs</source>
        <translation>braucht</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Overridden by %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start  Enter</source>
        <translation>Beginnen  Enter</translation>
    </message>
    <message>
        <source>There is no card for this</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::ExceptionList</name>
    <message>
        <source>waits for a disposition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rejected by %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::ExceptionPanel</name>
    <message>
        <source>agreed with the client</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured from both ends, within the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spare fibre, not in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibrated afterwards, losses unchanged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accept  A</source>
        <translation>Annehmen  A</translation>
    </message>
    <message>
        <source>Reject  X</source>
        <translation>Ablehnen  X</translation>
    </message>
    <message>
        <source>Exceptions</source>
        <translation>Ausnahmen</translation>
    </message>
    <message>
        <source>Accept the chosen exceptions, with a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reject the chosen exceptions, with a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No exceptions</source>
        <translation>Keine Ausnahmen</translation>
    </message>
    <message>
        <source>%1 exceptions, all decided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 exceptions, %2 wait for a disposition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 exceptions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reject: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accept: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reject</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved. Press Enter to try again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::FieldEdit</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is larger than 8 MB; choose another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be read; choose another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a photo…   Space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is no JPEG or PNG; choose another</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::Finder</name>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>What do you want? Type a few letters</source>
        <translation>Was möchten Sie? Ein paar Buchstaben genügen</translation>
    </message>
    <message>
        <source>Find an action, a tool, a job</source>
        <translation>Aktion, Gerät oder Auftrag finden</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>everywhere</source>
        <translation>überall</translation>
    </message>
    <message>
        <source>Drift of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splice on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search all splices for “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>care card</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::FirstRun</name>
    <message>
        <source>mass splicer, 12 grooves</source>
        <translation>Massenspleißgerät, 12 Nuten</translation>
    </message>
    <message>
        <source>mass splicer, 4 grooves</source>
        <translation>Massenspleißgerät, 4 Nuten</translation>
    </message>
    <message>
        <source>mass splicer, 16 grooves</source>
        <translation>Massenspleißgerät, 16 Nuten</translation>
    </message>
    <message>
        <source>single-fibre splicer</source>
        <translation>Einzelfaser-Spleißgerät</translation>
    </message>
    <message>
        <source>A new logbook</source>
        <translation>Ein neues Bordbuch</translation>
    </message>
    <message>
        <source>Three questions and you can splice. Arcwright then watches the losses and says when a tool wants care, and which.</source>
        <translation>Drei Fragen, dann können Sie spleißen. Arcwright beobachtet die Dämpfungen und sagt, wann ein Gerät Pflege braucht und welches.</translation>
    </message>
    <message>
        <source>Your crew label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a name or a crew label; may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is at the keyboard?</source>
        <translation>Wer sitzt an der Tastatur?</translation>
    </message>
    <message>
        <source>Kind of splicer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label of the splicer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which splicer do you work with, and what do you call it?</source>
        <translation>Mit welchem Spleißgerät arbeiten Sie, und wie heißt es?</translation>
    </message>
    <message>
        <source>Label of the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for example HR-B; may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the logbook</source>
        <translation>Bordbuch beginnen</translation>
    </message>
    <message>
        <source>Look at a demo crew first</source>
        <translation>Erst ein Beispiel ansehen</translation>
    </message>
    <message>
        <source>Skip, I will import a log</source>
        <translation>Weiter, ich importiere ein Protokoll</translation>
    </message>
    <message>
        <source>Label of the closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is the job called, and the closure on the table?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::GentlerFirst</name>
    <message>
        <source>Gentler care comes first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” on %2 is the more drastic step. Gentle before drastic (common practice): this was not tried yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do this instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do this instead: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or go on with it, and say why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept in the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it  Esc</source>
        <translation>Lassen  Esc</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::GrooveStrip</name>
    <message>
        <source>Each groove alone</source>
        <translation>Jede Nut für sich</translation>
    </message>
    <message>
        <source>no groove stands out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stands out: groove %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each groove alone</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::Help</name>
    <message>
        <source>Everywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>The losses are what they were in the baseline. Go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something moves, but it may be luck. Clean early; nothing has to stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A chart has signalled. Do the care it names before the next closure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It drifted, care was done, and the losses came back down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer than 60 arcs yet: there is nothing to compare with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it decides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every splicer is compared with its own past: a stretch of arcs, the baseline, says what its losses look like when all is well. Charts add up how far the newer losses lie above it: one chart for all grooves together, one for each groove alone, more for spread, cleave angles and re-splices.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A chart speaks when its sum passes a limit. The limits are set so that all charts of a splicer together give about one false signal per so many arcs, the false-alarm budget. A smaller budget finds faults earlier and cries wolf more often.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A signal names when it probably began, with a span; what probably caused it, with the other causes and their weights; and the evidence, which you can check by hand. &quot;Likely&quot; means likely: a cause is never certain from losses alone, and the splicer&apos;s own losses are estimates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After each care action the next arcs are compared with those before it, and the page says whether it helped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>States and charts</source>
        <translation>Zustände und Diagramme</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Help pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>What to expect of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured on simulated logs, 100 of each fault, at one false signal in 1,000 arcs; no field record is behind these figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its limits: slow electrode wear is found late and sometimes taken for something else. With one splicer alone on a job, a fibre and a machine that change together cannot be told apart: make a few splices on another splicer. Lots of fibre that differ much raise more false signals than promised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Simulated fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arcs to the signal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cause named right</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::Histogram</name>
    <message>
        <source>Spread of the losses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 splices, most at %2 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 dB and more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::HistorySheet</name>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>History: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close  Esc</source>
        <translation>Schließen  Esc</translation>
    </message>
    <message>
        <source>Looking for the record…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for the record of a journal line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This line wrote many records at once, as an import does. Find one of them by Search on Today, then ask for its history.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is written about it yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written once and never changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 entries, oldest first. Nothing is overwritten; the last one counts.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::ImportPanel</name>
    <message>
        <source>What do the files hold?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1  Splice log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2  Care events</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3  Measured losses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose files…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to splicing  Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop, take in nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rows read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>known already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopping…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files to take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped; of this file nothing was taken in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 files were taken in before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done; some rows were set aside and wait for you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done; everything was known already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done; every row landed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 row waits to be mended  M</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 rows wait to be mended  M</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::JobBar</name>
    <message numerus="yes">
        <source>about %n s left</source>
        <translation>
            <numerusform>noch etwa %n s</numerusform>
            <numerusform>noch etwa %n s</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n min left</source>
        <translation>
            <numerusform>noch etwa %n min</numerusform>
            <numerusform>noch etwa %n min</numerusform>
        </translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stop: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::JobRecords</name>
    <message>
        <source>Looking at the jobs</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::JobSheet</name>
    <message>
        <source>Job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Title for people</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acceptance rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit per splice, dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Average, dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ceiling, dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempts before keeping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cable</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>Cable label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibres in the cable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tubes or ribbons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length, km</source>
        <translation>Länge, km</translation>
    </message>
    <message>
        <source>Closure label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splice plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1-144 straight, or 1-12 to 25-36; 13-24 to 1-12</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may be empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tubes of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ribbons of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave  Esc</source>
        <translation>Verlassen  Esc</translation>
    </message>
    <message>
        <source>a new job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new cable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 fibres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 splices planned: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closure %1 of job %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How they are stripped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ribbon, not said which</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flat ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>web-type ribbon: clean after each strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loose; several at once are ribbonised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cable on side B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss that counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan from CSV…  Ctrl+O</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimate, or one way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean of both ways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save it and splice  Ctrl+Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none, or the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>none, only the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splice plan with the columns fibre_a and fibre_b</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>job %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::JobTree</name>
    <message>
        <source>Jobs and closures</source>
        <translation>Aufträge und Muffen</translation>
    </message>
    <message>
        <source>%1 spliced, no plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>, %1 open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record no. %1</source>
        <translation>Protokoll Nr. %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number given twice; %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>superseded by no. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issued on %1 by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>job %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::JournalPanel</name>
    <message>
        <source>%1 lines; each carries the hash of the one before. Enter: the history of what a line is about.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::JournalTable</name>
    <message>
        <source>when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>row</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::JournalView</name>
    <message>
        <source>Journal lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chosen line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>journal row %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hash %1…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::Keeper</name>
    <message>
        <source>Checking the logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copying the logbook</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::KitPage</name>
    <message>
        <source>, at use %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Add a tool</source>
        <translation>Gerät hinzufügen</translation>
    </message>
    <message>
        <source>No tools yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the splicer you work with first, then its cleaver and stripper. From then on the book counts arcs, cleaves and strips, and says when each tool wants care.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the first tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Care for it</source>
        <translation>Pflegen</translation>
    </message>
    <message>
        <source>Its drift</source>
        <translation>Seine Drift</translation>
    </message>
    <message>
        <source>Pair cleaver…</source>
        <translation>Trenngerät zuordnen…</translation>
    </message>
    <message>
        <source>Out of service</source>
        <translation>Außer Betrieb</translation>
    </message>
    <message>
        <source>Correct counter…</source>
        <translation>Zähler berichtigen…</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Pair a cleaver with the chosen splicer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the chosen tool out of service, or back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the counter of the chosen tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking at the tools…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uses in the book: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own counter: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last used %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaver: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>prepares for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back in service</source>
        <translation>Wieder in Betrieb</translation>
    </message>
    <message>
        <source>Which cleaver prepares for %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From now on, until the next pairing. Cleaves are counted for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Splicers: %1 · cleavers: %2 · strippers: %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::LimitsSheet</name>
    <message>
        <source>Limits of care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They hold for this logbook. An empty line is as shipped (common practice). What a card says itself, such as every how many arcs, is changed in the card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration owed after a change of temperature of, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration owed after a change of air pressure of, hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration owed after days without an arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These three, so many times further out for a splicer that adjusts its arc itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration runs in vain before a diagnostic run is owed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arcs of a pair of electrodes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the card says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order parts that will be used up within days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave as it was  Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep these limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A ribbon cable that does not say what it is counts as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flat ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>web-type ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ribbonised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limits of care</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::LogbookPage</name>
    <message>
        <source>Logbook</source>
        <translation>Bordbuch</translation>
    </message>
    <message>
        <source>Parts of the logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>What was written, by whom and from where; handing over, taking in, and copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edited twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laptops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Condition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Logbook: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::LossPad</name>
    <message>
        <source>fibre</source>
        <translation>Faser</translation>
    </message>
    <message>
        <source>loss dB</source>
        <translation>Dämpfung dB</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation>Versuch</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>accept</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>accept, high</source>
        <translation>gut, hoch</translation>
    </message>
    <message>
        <source>re-splice</source>
        <translation>neu spleißen</translation>
    </message>
    <message>
        <source>high: note it</source>
        <translation>hoch: Notiz</translation>
    </message>
    <message>
        <source>over ceiling</source>
        <translation>über der Grenze</translation>
    </message>
    <message>
        <source>Enter saves it</source>
        <translation>Enter sichert</translation>
    </message>
    <message>
        <source>kept, noted</source>
        <translation>behalten, Notiz</translation>
    </message>
    <message>
        <source>high loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bubble or line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bad cleave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre broke</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sleeve misplaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>typed at the wrong fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre broke in the tray</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>test splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entered twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same value on every attempt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no fibre left to re-splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mismatched fibre, agreed with the client</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-splice  R</source>
        <translation>Neu spleißen  R</translation>
    </message>
    <message>
        <source>Void  V</source>
        <translation>Streichen  V</translation>
    </message>
    <message>
        <source>Re-splice this fibre or ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep a high splice with a note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Void a reading with a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste the losses of a ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brought back from before: typed and not saved yet. Enter saves it, Esc drops it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-splice the whole ribbon: why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-splice fibre %1: why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it although it is over the limit: why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Void the last reading of fibre %1: why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Void</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type digits, Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>re-splice, then digits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Average so far %1 dB, over the %2 agreed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre %1 at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-splice the ribbon, then type all its fibres. Esc leaves it as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: re-splice the ribbon and type it again, or K keeps it with a note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-splice and type the new loss, or K keeps it with a note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Digits correct this reading. R begins a re-splice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n noted. Enter saves them, Esc drops them.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>4 is 0.04. Enter saves each fibre; or Space between them and one Enter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4 is 0.04, 12 is 0.12. Enter saves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss pad: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss pad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep  K</source>
        <translation>Behalten  K</translation>
    </message>
    <message>
        <source>Split  T</source>
        <translation>Trennen  T</translation>
    </message>
    <message>
        <source>Keep a splice over the limit, with a note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An attempt belongs to another fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split attempts: one belongs to another fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which attempt of fibre %1 was made at which fibre?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, time steps back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Digits correct this reading; R re-splice, V void, T it was another fibre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edited on two laptops: choose on Logbook, F7, which one shows.</source>
        <translation>Auf zwei Laptops bearbeitet: im Bordbuch, F7, wählen, was gilt.</translation>
    </message>
    <message>
        <source>Measured at %1 nm: %2 and %3, mean %4 dB.</source>
        <translation>Gemessen bei %1 nm: %2 und %3, Mittel %4 dB.</translation>
    </message>
    <message>
        <source>Measured at %1 nm one way only, %2 dB: no splice loss yet.</source>
        <translation>Bei %1 nm nur in einer Richtung gemessen, %2 dB: noch keine Spleißdämpfung.</translation>
    </message>
    <message>
        <source>edited twice</source>
        <translation>doppelt bearbeitet</translation>
    </message>
    <message>
        <source>one way</source>
        <translation>eine Richtung</translation>
    </message>
    <message>
        <source>No closure on the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A splice is written down for a closure of the job. Make the first one; its label is enough. S chooses another job or closure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a closure  Enter</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::MachineCard</name>
    <message>
        <source>groove %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grooves %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaver</source>
        <translation>Trenngerät</translation>
    </message>
    <message>
        <source>fibre</source>
        <translation>Faser</translation>
    </message>
    <message>
        <source>electrodes</source>
        <translation>Elektroden</translation>
    </message>
    <message>
        <source>calibration</source>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>all together</source>
        <translation>alle zusammen</translation>
    </message>
    <message>
        <source>No splicer chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing known yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splicer %1</source>
        <translation>Spleißgerät %1</translation>
    </message>
    <message>
        <source>, %1 grooves</source>
        <translation>, %1 Nuten</translation>
    </message>
    <message>
        <source>no arcs yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since arc %1 (%2–%3), %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean of late %1 dB, baseline %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of about %2 arcs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grooves cleaned</source>
        <translation>Nuten gereinigt</translation>
    </message>
    <message>
        <source>not known, over %1 arcs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 arcs ago</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arc calibration</source>
        <translation>Lichtbogenkalibrierung</translation>
    </message>
    <message>
        <source>owed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looking…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arcs in this mode: %1; the charts judge from 60 on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::MainWindow</name>
    <message>
        <source>%1 - Arcwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Making the demo logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Zu %1</translation>
    </message>
    <message>
        <source>Help and keys</source>
        <translation>Hilfe und Tasten</translation>
    </message>
    <message>
        <source>Find an action, a tool, a job</source>
        <translation>Aktion, Gerät oder Auftrag finden</translation>
    </message>
    <message>
        <source>Undo the last entry</source>
        <translation>Letzten Eintrag zurücknehmen</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Change between Day and Night</source>
        <translation>Zwischen Tag und Nacht wechseln</translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation>Größere Schrift</translation>
    </message>
    <message>
        <source>Smaller text</source>
        <translation>Kleinere Schrift</translation>
    </message>
    <message>
        <source>Open the demo crew in a window of its own</source>
        <translation>Die Beispielmannschaft in eigenem Fenster öffnen</translation>
    </message>
    <message>
        <source>Say who is at the keyboard</source>
        <translation>Sagen, wer an der Tastatur sitzt</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Zurück: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Wiederholen: %1</translation>
    </message>
    <message>
        <source>saved %1:%2:%3</source>
        <translation>gesichert %1:%2:%3</translation>
    </message>
    <message>
        <source>Who is at the keyboard?</source>
        <translation>Wer sitzt an der Tastatur?</translation>
    </message>
    <message>
        <source>Your crew label. It is written beside every entry you make.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the language</source>
        <translation>Sprache wechseln</translation>
    </message>
    <message>
        <source>what is typed would be lost</source>
        <translation>das Getippte ginge verloren</translation>
    </message>
    <message>
        <source>Finish it or clear it, then change the language</source>
        <translation>Beenden oder löschen Sie es, dann die Sprache wechseln</translation>
    </message>
    <message>
        <source>Help: %1</source>
        <translation>Hilfe: %1</translation>
    </message>
    <message>
        <source>History of what is chosen: who wrote what, when, from where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos and notes of what is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would it lose? Offset, tilt, mode fields</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish it or clear it, then change the look</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::MendSheet</name>
    <message>
        <source>Rows set aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in the mended rows  Ctrl+Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave this row out  Del</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set aside: nothing of these is lost. Choose a row and press Enter to mend it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set aside: nothing of these is lost, mend them and import again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mended; the logbook has it already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mended, will be taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, line %2. Enter goes on, Esc leaves the row as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the whole row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The logbook has this splice already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This row lands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No row is mended yet: choose one and press Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 are mended and not taken in yet.</source>
        <translation>%1 sind berichtigt und noch nicht übernommen.</translation>
    </message>
</context>
<context>
    <name>arc::ui::OrdersAside</name>
    <message>
        <source>To order</source>
        <translation>Zu bestellen</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; needed by %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::OtherCare</name>
    <message>
        <source>Something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Start this care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit card…</source>
        <translation>Karte ändern…</translation>
    </message>
    <message>
        <source>Limits…</source>
        <translation>Grenzwerte…</translation>
    </message>
    <message>
        <source>Limits of care</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::PackPanel</name>
    <message>
        <source>A satchel is one signed file for another logbook: by stick, by mail, any way you like. Packing the same again, or more than needed, does no harm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is handed over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was written since a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: who has the file can read it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passphrase once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the satchel…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two passphrases are not the same. Type it once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no job in this logbook yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder for the satchel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packing…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packing a satchel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 entries are in %2, signed by this laptop%3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and sealed. Tell the passphrase another way than the file</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::PadRow</name>
    <message>
        <source>fibre %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>attempt %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::PadRows</name>
    <message>
        <source>%1–%2 of %3</source>
        <translation type="unfinished">%1 von %3 {1–%2 ?}</translation>
    </message>
</context>
<context>
    <name>arc::ui::PausedRuns</name>
    <message>
        <source>, step %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paused: %1. Begun %2 by %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::PreviewTable</name>
    <message>
        <source>not read yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set aside: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what comes of it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::ProblemBar</name>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
</context>
<context>
    <name>arc::ui::PromptBar</name>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>↑ ↓ usual answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is needed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::QueueList</name>
    <message>
        <source>Nothing is due. The queues fill from counts, days, the air around and the charts.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::QueueRow</name>
    <message>
        <source>Hold</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Next gap</source>
        <translation>Nächste Pause</translation>
    </message>
    <message>
        <source>Shift end</source>
        <translation>Schichtende</translation>
    </message>
    <message>
        <source>Bench day</source>
        <translation>Werkstatttag</translation>
    </message>
    <message>
        <source>+%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing holds this crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is due</source>
        <translation>nichts fällig</translation>
    </message>
    <message>
        <source>looking…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::Rail</name>
    <message>
        <source>Screens</source>
        <translation>Ansichten</translation>
    </message>
    <message>
        <source>Help  F1</source>
        <translation>Hilfe  F1</translation>
    </message>
    <message>
        <source>Help and keys</source>
        <translation>Hilfe und Tasten</translation>
    </message>
    <message>
        <source>Last entry on disk</source>
        <translation>Letzter gesicherter Eintrag</translation>
    </message>
    <message>
        <source>nothing written yet</source>
        <translation>noch nichts geschrieben</translation>
    </message>
    <message>
        <source>Sign on</source>
        <translation>Anmelden</translation>
    </message>
    <message>
        <source>Say who is at the keyboard</source>
        <translation>Sagen, wer an der Tastatur sitzt</translation>
    </message>
    <message>
        <source>At the keyboard: %1</source>
        <translation>An der Tastatur: %1</translation>
    </message>
</context>
<context>
    <name>arc::ui::RailButton</name>
    <message>
        <source>key %1</source>
        <translation>Taste %1</translation>
    </message>
</context>
<context>
    <name>arc::ui::ReadingsModel</name>
    <message>
        <source>arc</source>
        <translation>Lichtbogen</translation>
    </message>
    <message>
        <source>when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>attempt</source>
        <translation>Versuch</translation>
    </message>
    <message>
        <source>worst angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loss dB</source>
        <translation>Dämpfung dB</translation>
    </message>
    <message>
        <source>groove %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>owed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibration</source>
        <translation>Kalibrierung</translation>
    </message>
</context>
<context>
    <name>arc::ui::ReadingsTable</name>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Losses as the splicer estimated them, in dB; one row is one arc.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>arc::ui::RecordBar</name>
    <message>
        <source>Issue the final record…</source>
        <translation>Endgültig ausstellen…</translation>
    </message>
    <message>
        <source>Write a draft…</source>
        <translation>Entwurf schreiben…</translation>
    </message>
    <message>
        <source>Verify a record…</source>
        <translation>Protokoll prüfen…</translation>
    </message>
    <message>
        <source>Paper of the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a draft of the closeout record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issue the final closeout record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verify a closeout record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every exception needs a disposition first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every exception needs a disposition first: choose it, then A or X.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A final record carries the name of who issues it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder in which the record is made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the record…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issuing the closeout record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the draft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: %1. A stranger can verify it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record to verify</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verifying…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verifying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language of the pages</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::Session</name>
    <message>
        <source>Looking at the losses</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::SetAsideTable</name>
    <message>
        <source>file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why it was set aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the row</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::SetUpPanel</name>
    <message>
        <source>Set up once; it stays until you change it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splicer</source>
        <translation>Spleißgerät</translation>
    </message>
    <message>
        <source>Fibres per arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splice mode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaver</source>
        <translation>Trenngerät</translation>
    </message>
    <message>
        <source>Temperature, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air pressure, hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splice with this  Ctrl+Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave as it was  Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New job, cable or closure…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unassigned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1, single</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 °C warmer than last written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 °C colder than last written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air pressure changed by %1 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the arc of %1 was calibrated for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: an arc calibration will be owed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::SignalCard</name>
    <message>
        <source>began %1, %2%3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signal at arc %1, %2 later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1&#xa0;dB since then, seen by the chart of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reason: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::SignalPanel</name>
    <message>
        <source>Signals</source>
        <translation>Signale</translation>
    </message>
    <message>
        <source>Dismiss, with a reason…</source>
        <translation>Verwerfen, mit Grund…</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>Readings  R</source>
        <translation>Messwerte  R</translation>
    </message>
    <message>
        <source>Start: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 arcs so far. From %2 on there is a baseline to compare with, and the charts can speak.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A chart is filling up but has not reached its limit. Nothing has to stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No chart has signalled. Losses now %1, baseline %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All signals, N and P go through them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Did the care help?</source>
        <translation>Hat die Pflege geholfen?</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 dB (%2 … %3), %4 arcs before, %5 after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>electrodes</source>
        <translation>Elektroden</translation>
    </message>
    <message>
        <source>%1 arcs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1 arcs left (%2–%3, 80 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too early for a forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plain rule of about 5,000 arcs: %1 left</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::SpanSheet</name>
    <message>
        <source>Spans and closures</source>
        <translation>Strecken und Muffen</translation>
    </message>
    <message>
        <source>What the link budget assumes</source>
        <translation>Was die Streckenbilanz annimmt</translation>
    </message>
    <message>
        <source>Span</source>
        <translation>Strecke</translation>
    </message>
    <message>
        <source>Span label</source>
        <translation>Kennung der Strecke</translation>
    </message>
    <message>
        <source>Begins at</source>
        <translation>Beginnt bei</translation>
    </message>
    <message>
        <source>Ends at</source>
        <translation>Endet bei</translation>
    </message>
    <message>
        <source>Cable</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>Length, km</source>
        <translation>Länge, km</translation>
    </message>
    <message>
        <source>Closures on it</source>
        <translation>Muffen darauf</translation>
    </message>
    <message>
        <source>a closure, or a name as rack 2</source>
        <translation>eine Muffe, oder ein Name wie Gestell 2</translation>
    </message>
    <message>
        <source>empty: that of the cable</source>
        <translation>leer: die des Kabels</translation>
    </message>
    <message>
        <source>HR-01 to HR-05, HR-07</source>
        <translation>HR-01 to HR-05, HR-07</translation>
    </message>
    <message>
        <source>Save the span  Ctrl+Enter</source>
        <translation>Strecke speichern  Ctrl+Enter</translation>
    </message>
    <message>
        <source>Take it back  Ctrl+Del</source>
        <translation>Zurücknehmen  Ctrl+Del</translation>
    </message>
    <message>
        <source>Spans from CSV…  Ctrl+O</source>
        <translation>Strecken aus CSV…  Ctrl+O</translation>
    </message>
    <message>
        <source>Leave  Esc</source>
        <translation>Verlassen  Esc</translation>
    </message>
    <message>
        <source>a new span</source>
        <translation>eine neue Strecke</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>none, or several</source>
        <translation>keines, oder mehrere</translation>
    </message>
    <message>
        <source>Spans of the job</source>
        <translation>Strecken des Auftrags</translation>
    </message>
    <message>
        <source>%1 closures: %2</source>
        <translation>%1 Muffen: %2</translation>
    </message>
    <message>
        <source>a connector at %1</source>
        <translation>ein Stecker bei %1</translation>
    </message>
    <message>
        <source> and at </source>
        <translation> und bei </translation>
    </message>
    <message>
        <source>Nothing is changed.</source>
        <translation>Nichts ist geändert.</translation>
    </message>
    <message>
        <source>span %1 of job %2</source>
        <translation>Strecke %1 des Auftrags %2</translation>
    </message>
    <message>
        <source>Span %1 is saved.</source>
        <translation>Strecke %1 ist gespeichert.</translation>
    </message>
    <message>
        <source>Choose a span first.</source>
        <translation>Zuerst eine Strecke wählen.</translation>
    </message>
    <message>
        <source>span %1 taken back</source>
        <translation>Strecke %1 zurückgenommen</translation>
    </message>
    <message>
        <source>Span %1 is taken back; its closures are as they were.</source>
        <translation>Strecke %1 ist zurückgenommen; ihre Muffen sind, wie sie waren.</translation>
    </message>
    <message>
        <source>Spans with the columns span, from, to, cable, length_km, closures</source>
        <translation>Strecken mit den Spalten span, from, to, cable, length_km, closures</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All spans of the table are here already.</source>
        <translation>Alle Strecken der Tabelle sind schon hier.</translation>
    </message>
    <message>
        <source>%1 spans of job %2</source>
        <translation>%1 Strecken des Auftrags %2</translation>
    </message>
    <message>
        <source>%1 spans are saved.</source>
        <translation>%1 Strecken sind gespeichert.</translation>
    </message>
</context>
<context>
    <name>arc::ui::SpanTable</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>over</source>
        <translation>darüber</translation>
    </message>
    <message>
        <source>%1 nm: %2 measured both ways, %3 estimated</source>
        <translation>%1 nm: %2 in beiden Richtungen gemessen, %3 geschätzt</translation>
    </message>
    <message>
        <source>estimated only</source>
        <translation>nur geschätzt</translation>
    </message>
    <message>
        <source>the whole job, one span</source>
        <translation>der ganze Auftrag, eine Strecke</translation>
    </message>
    <message>
        <source>on no span</source>
        <translation>auf keiner Strecke</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>No closure</source>
        <translation>Ohne Muffe</translation>
    </message>
    <message>
        <source>%1 to re-splice</source>
        <translation>%1 neu zu spleißen</translation>
    </message>
    <message>
        <source>%1 both ways</source>
        <translation>%1 in beiden Richtungen</translation>
    </message>
    <message>
        <source>%1 one way</source>
        <translation>%1 in einer Richtung</translation>
    </message>
    <message>
        <source>budget %1 nm, dB</source>
        <translation>Bilanz %1 nm, dB</translation>
    </message>
    <message>
        <source>budget, dB</source>
        <translation>Bilanz, dB</translation>
    </message>
    <message>
        <source>span and closures</source>
        <translation>Strecke und Muffen</translation>
    </message>
    <message>
        <source>from, to</source>
        <translation>von, bis</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>spliced</source>
        <translation>gespleißt</translation>
    </message>
    <message>
        <source>average, dB</source>
        <translation>Mittel, dB</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
</context>
<context>
    <name>arc::ui::SpliceSearch</name>
    <message>
        <source>fibre, note or person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above %1 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back  Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History of the chosen splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 splices and more below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No splice fits. Take a filter away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not accepted</source>
        <translation>nicht angenommen</translation>
    </message>
    <message>
        <source>7 d, a day as 2031-03-03, a month as 2031-03, or 2031-03-03 to 2031-03-15</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Searching…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splice of fibre %1, %2 dB, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closure %1</source>
        <translation>Muffe %1</translation>
    </message>
    <message>
        <source>fibre %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>newest first</source>
        <translation>neueste zuerst</translation>
    </message>
    <message>
        <source>oldest first</source>
        <translation>älteste zuerst</translation>
    </message>
</context>
<context>
    <name>arc::ui::SpliceTable</name>
    <message>
        <source>unassigned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>job and closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre</source>
        <translation>Faser</translation>
    </message>
    <message>
        <source>loss dB</source>
        <translation>Dämpfung dB</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation>Versuch</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>splicer</source>
        <translation>Spleißgerät</translation>
    </message>
    <message>
        <source>groove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accept</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>accept, high</source>
        <translation>gut, hoch</translation>
    </message>
    <message>
        <source>re-splice</source>
        <translation>neu spleißen</translation>
    </message>
    <message>
        <source>high, note missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept, noted</source>
        <translation>behalten, Notiz</translation>
    </message>
    <message>
        <source>over ceiling</source>
        <translation>über der Grenze</translation>
    </message>
    <message>
        <source>voided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Searching the splices</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::SplicerChips</name>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splicer</source>
        <translation>Spleißgerät</translation>
    </message>
    <message>
        <source>Mode and fibres an arc</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::SummaryCard</name>
    <message>
        <source>accepted</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>accepted, with exceptions</source>
        <translation>angenommen, mit Ausnahmen</translation>
    </message>
    <message>
        <source>exceptions wait</source>
        <translation>Ausnahmen offen</translation>
    </message>
    <message>
        <source>not accepted</source>
        <translation>nicht angenommen</translation>
    </message>
    <message>
        <source>spliced</source>
        <translation>gespleißt</translation>
    </message>
    <message>
        <source>mean dB</source>
        <translation>Mittel dB</translation>
    </message>
    <message>
        <source>median dB</source>
        <translation>Median dB</translation>
    </message>
    <message>
        <source>worst dB</source>
        <translation>schlechteste dB</translation>
    </message>
    <message>
        <source>first time</source>
        <translation>auf Anhieb</translation>
    </message>
    <message>
        <source>limit %1 dB, average %2, ceiling %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Link budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 nm %2 of %3 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Link budget, as spliced of allowed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Link budget of span %1, as spliced of allowed: %2</source>
        <translation>Bilanz der Strecke %1, gespleißt von erlaubt: %2</translation>
    </message>
</context>
<context>
    <name>arc::ui::TakeInPanel</name>
    <message>
        <source>%1, key %2, packed %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of a satchel is taken in or nothing, in any order, any number of times: what is here already is not doubled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a satchel…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passphrase of the satchel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passphrase, if it has one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Satchels of laptops nobody has accepted yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They lie beside the logbook; nothing of them is in it. Compare the key with the one that the other laptop shows under Laptops, by phone, then accept it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting satchels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accept the laptop  A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw the satchel away  X</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accept the laptop of the chosen satchel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw the chosen waiting satchel away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Satchel to take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Satchels (*.satchel)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading what it says…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading a satchel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taking it in…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taking in a satchel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has accepted the laptop that signed it (%1, key %2): the satchel waits below, and nothing of it is in the logbook.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does the other laptop show the key %1? Then give it a name; its satchels are taken in from now on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press X once more to throw %1 away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The satchel was thrown away; nothing of it was in the logbook.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New entries from %2: %1; here already: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records edited here and there: %1; look at them under Edited twice.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::Timeline</name>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
</context>
<context>
    <name>arc::ui::TodayPage</name>
    <message>
        <source>last ribbon of the closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the client waits, looked at by the supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done, not yet written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-up  S</source>
        <translation>Einrichten  S</translation>
    </message>
    <message>
        <source>Import  I</source>
        <translation>Importieren  I</translation>
    </message>
    <message>
        <source>All splices  /</source>
        <translation>Alle Spleiße  /</translation>
    </message>
    <message>
        <source>Nothing to splice yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A job tells which fibres meet in which closure and what loss its contract accepts. Make one, or import a splice log that a splicer exported.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the splicers into the kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import a splice log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Queues</source>
        <translation>Warteschlangen</translation>
    </message>
    <message>
        <source>Set up: splicer, job, closure, mode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import a splice log, events or measured losses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search all splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a job, a cable or a closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Average of the job</source>
        <translation>Mittel des Auftrags</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Closure %1</source>
        <translation>Muffe %1</translation>
    </message>
    <message>
        <source>tray %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ribbon %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tube %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No closure chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 fibres, %2 done</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n to re-splice</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>limit %1 dB, average %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Going on is written into the record. Who goes on, and why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved. Press Enter to try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job, closure, tools and the air around: every reading carries them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A job has cables and closures; the splice plan says which fibre meets which</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every row lands or is set aside with its reason; the same file twice changes nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos and notes of the splice or the closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splice of fibre %1, attempt %2, %3 dB, %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The job: spans, averages, link budget, closures</source>
        <translation>Der Auftrag: Strecken, Mittelwerte, Bilanz, Muffen</translation>
    </message>
    <message>
        <source>Job %1: spans and closures</source>
        <translation>Auftrag %1: Strecken und Muffen</translation>
    </message>
    <message>
        <source>A span is accepted as one: its average, its link budget. A job without spans is one span</source>
        <translation>Eine Strecke wird als Ganzes abgenommen: Mittelwert, Bilanz. Ein Auftrag ohne Strecken ist eine Strecke</translation>
    </message>
    <message>
        <source>span %1</source>
        <translation>Strecke %1</translation>
    </message>
    <message>
        <source>the closure was edited twice, see Logbook, F7</source>
        <translation>die Muffe wurde doppelt bearbeitet, siehe Bordbuch, F7</translation>
    </message>
</context>
<context>
    <name>arc::ui::ToolCard</name>
    <message>
        <source>Arc calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arc calibration %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is counted for this tool yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out of service</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::TwicePanel</name>
    <message>
        <source>%1 on %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record no. %1 of %2 was issued twice: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No. %1 supersedes both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issue the record again on Closeout: the new one supersedes both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records edited twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep version %1 of the record edited twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for records edited twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No record was edited on two laptops without one knowing of the other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These were edited on two laptops, neither knowing of the other. The later one shows until somebody chooses; both stay in the history. Press the number of the one to keep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Version %1, shows now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, from %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep this one  %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the decision…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settling a record edited twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept: %1. The other stays in the history.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::WhatIf</name>
    <message>
        <source>What would it lose?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1310 nm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1550 nm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wavelength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mode-field diameter of fibre A, µm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mode-field diameter of fibre B, µm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offset of the cores, µm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilt of the axes, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss of the splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A model, not a measurement: round light spots, no gap, nothing between the ends. What a splicer shows is its own estimate; what a link loses is measured from both ends. A cleave angle is not the tilt of the axes. Never look into a fibre or a connector; follow local codes and licensed practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equal fields of radius w: 4.343 (d/w)² dB for an offset d, 4.343 (π n w θ / λ)² dB for a tilt θ; unlike fields: -20 log10(2 w1 w2 / (w1² + w2²)) dB, and the parts add. Source: D. Marcuse, Bell Syst. Tech. J. 56(5), 1977. Readings from one end: IEC 60793-1-40 annex C.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close  Esc</source>
        <translation>Schließen  Esc</translation>
    </message>
    <message>
        <source>of this: unlike mode fields %1, offset %2, tilt %3 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured from A %1, from B %2, mean of both %3 dB: one end alone misleads when the mode fields differ</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>arc::ui::text</name>
    <message>
        <source>%1 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>just now</source>
        <translation>gerade eben</translation>
    </message>
    <message numerus="yes">
        <source>%n min ago</source>
        <translation>
            <numerusform>vor %n min</numerusform>
            <numerusform>vor %n min</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n h ago</source>
        <translation>
            <numerusform>vor %n h</numerusform>
            <numerusform>vor %n h</numerusform>
        </translation>
    </message>
    <message>
        <source>1 day ago</source>
        <translation>vor 1 Tag</translation>
    </message>
    <message numerus="yes">
        <source>%n days ago</source>
        <translation>
            <numerusform>vor %n Tag</numerusform>
            <numerusform>vor %n Tagen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>care cards</name>
    <message>
        <source>Calibrate the arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets arc power and arc position to the air, the height and the electrodes as they are now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An arc can ignite gas: in manholes, pits and other closed places test the air first and keep to the confined-space rules. Follow local codes and licensed practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre ends are glass needles that are hard to see: wear eye protection, put every offcut into the shard bin, keep food and drink away from the work. Follow local codes and licensed practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electrodes carry high voltage: switch the splicer off and unplug it (battery and mains) before a finger or tool comes near them. Follow local codes and licensed practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laser light in a fibre is invisible: treat every fibre as live and never look into an end or a connector, with or without a magnifier (IEC 60825-2). Follow local codes and licensed practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reference fibre. Single-fibre splicer: standard single-mode (ITU-T G.652). Mass splicer: the fibre type of the mode in use, and as many fibres as are spliced at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermometer, if the place has changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stripper, wipes and cleaver in good order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New electrodes burn at another place and strength: splices before the calibration are luck.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The electrodes were out: the arc may sit elsewhere, and the splicer would not know.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air pressure and temperature change the arc: losses step up in all grooves at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After long disuse the arc is not what it was when the splicer was put away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the splicer stand where the work is until it has taken on the temperature of the place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Single-fibre splicer: take ITU-T G.652 fibre only. Mass splicer: take the fibre type of the mode in use and the same number of fibres as in the splices ahead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does the fibre fit the splicer and the mode?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the fibre before you go on: a calibration with the wrong type or number does not count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strip, wipe and cleave as for a splice. Poor ends make the calibration fail though the arc is fine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the arc calibration in the splicer&apos;s menu, load the fibres and start it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read both results: arc power and arc position.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After long disuse or a wrong calibration three to four runs are normal. After the fourth the diagnostic run is owed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Are power and position both adequate?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down both results of the last run and the fibre used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>G.652.D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>G.652.B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>G.651.1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>G.653</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>G.654</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>G.655</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>G.656</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>G.657.A1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>G.657.A2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>G.657.B3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number of fibres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature (optional)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo (optional)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean cleaver blade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wipes the film off the blade&apos;s flank; a sticky edge scores unevenly long before it is dull.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The blade cuts, and so do the shards around it: never touch the edge, and keep fingers out of its way while anything moves. Follow local codes and licensed practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Isopropyl alcohol burns and its vapour can ignite (flash point about 12 °C): ventilate, keep it from sparks and flames, and let every part dry before an arc. Follow local codes and licensed practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lint-free swabs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Isopropyl alcohol, at least 99 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ml</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A film on the edge scores the glass unevenly: angles scatter, and the blade is turned before it is spent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty the offcut box into the shard bin. Lock the blade carriage as the cleaver&apos;s manual says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dampen one swab end barely with alcohol and wipe up the flank of the blade, from the holder upward, and stop short of the edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lint torn off by the edge spoils the next cleaves, and the edge chips on anything hard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry the flank in the same direction with the other, dry swab end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look along the edge with light from the side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the blade free of film and lint?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleave three test fibres and look at their ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down the result.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The test cleaves were</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>poor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the blade to its next place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brings a fresh piece of edge to the fibre: through all positions at this height first, only then the next height, starting again at position 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Adjusting tool of the cleaver</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Magnifier and good light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A dull place on the edge tears the glass: angles and re-splices go up on every splicer this cleaver serves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before the blade is turned, pads, anvil and blade must have been cleaned and the cleaves still poor, or the count be high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Were pads, anvil and blade cleaned first?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean pads and anvil, then the blade, and try three cleaves. If they are good now, give up this card and leave the blade where it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A clean blade often has half its life left at this place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read height and position off the cleaver and compare with what this card says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty the offcut box into the shard bin and lock the blade carriage.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the blade by one position with the adjusting tool. From the last position of a height go to the next height at position 1. After the last position of the last height fit a new blade.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skipping positions wastes edge; raising early cuts into edge that is not spent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleave five test fibres.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the five ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If not: the blade may not be seated, or the height is off. Do not turn it further to cure that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Are the five test cleaves good?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down where the blade stands now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new blade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean clamp chips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wipes the small chips that press the fibres into the grooves; dirt under a chip lifts its fibre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dirt under a clamp chip lifts one fibre just as dirt in its groove does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Old film on the chips collects dust.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the wind cover, lift both clamps and take out every piece of fibre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dampen one swab end barely with alcohol and wipe both clamp chips along their length, one stroke in one direction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never across: the edge of the chip tears lint from the swab.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry both chips along their length with a fresh dry swab end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at both chips under magnification, from the side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Are both chips clean and free of lint?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower the clamps and close the cover once the alcohol has dried.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down what you found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was on the chips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>film</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean cleaver pads and anvil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleans the four clamp pads and the anvil; dirt under a pad twists the fibre and the cleave breaks at an angle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shard bin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dirt on pads or anvil twists the fibre: cleave angles and re-splices go up on every splicer this cleaver serves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shards and coating dust collect on the pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty the offcut box into the shard bin. Move the blade carriage to its rest and keep fingers off the blade.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dampen one swab end barely with alcohol and wipe the two upper clamp pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most two pads per swab end, or the dirt of the first goes onto the third.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a fresh swab end, barely damp, and wipe the two lower clamp pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a fresh swab end, barely damp, and wipe the anvil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry the two upper pads with a dry swab end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry the two lower pads with another dry swab end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry the anvil with a dry swab end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at all four pads and the anvil with light from the side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Are the four pads and the anvil clean and dry?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was on pads and anvil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diagnostic run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lets the splicer check itself from cameras to motors when good fibre preparation and all care did not help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reference fibre, freshly stripped, wiped and cleaved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power for the whole run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something to write the result codes on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rule out the fibre: splice twice with reference fibre and fresh cleaves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Most &quot;splicer faults&quot; are ends that were not clean or not square.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at both losses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then it is the fibre or its preparation, not the splicer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the loss back to normal with reference fibre?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the full diagnostic run in the splicer&apos;s menu, load fibres when it asks, and let it run to its end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read every line of the result.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Did every check pass?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note the failed lines, take the splicer out of service in the kit and send it to the workshop with the notes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opening the splicer further is workshop work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre</source>
        <translation>Faser</translation>
    </message>
    <message>
        <source>passed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checks that failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace electrodes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fits a new pair of electrodes and burns them in; worn tips make the arc wander and all losses rise and scatter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tips are hard and sharp and break when dropped: hold electrodes by the shaft, and put the old pair into the shard bin. Follow local codes and licensed practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New electrodes, a matched pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tool for the electrode covers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lint-free wipes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reference fibre for the arc calibration that follows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power for the whole stabilisation: a charged battery or the mains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worn electrodes raise the loss of all grooves slowly and make it scatter; the arc may fail in the middle of a closure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switch the splicer off and unplug it: mains lead out, battery out. Wait a minute.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loosen the covers and draw both old electrodes straight out. Do not pull sideways.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold the new pair against the light: both tips must be straight, clean and without a burr. Touch no tip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide the new electrodes in up to the stop, each to its own side, and fasten the covers as the splicer&apos;s manual says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never replace only one: the arc sits between two equal tips.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the cover, battery in, mains lead in, and switch on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell the splicer that the electrodes are new, so that its own counter starts again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the electrode stabilisation in the splicer&apos;s menu with no fibre loaded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the stabilisation run to its end. Leave the cover closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About 8 to 10 minutes on single-fibre splicers, about 15 on mass splicers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch a few arcs on the screen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An arc that still wanders after stabilisation usually means a tip that is not seated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the arc straight, steady and in the middle?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down what was fitted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The arc calibration comes next: until it is done, splices carry &quot;calibration owed&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch or part label of the new pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The old pair looked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>contaminated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean V-grooves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes dust and coating crumbs out of the V-grooves, which push a fibre aside and raise the loss of that groove.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soft groove brush, kept for grooves only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stiff groove brush, kept for grooves only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Magnifier or the splicer&apos;s own camera view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaning fluid of the groove kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A crumb in one groove raises the loss of that fibre and often of its neighbour, splice after splice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dust settles in open grooves even on quiet days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the wind cover and lift the clamps. Take out every piece of fibre and drop it into the shard bin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brush all grooves with the soft brush, along the grooves and outward, away from the electrodes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The groove brushes are used on nothing else: grease from another part would be carried into the grooves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at every groove under magnification, on both sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is every groove clean on both sides?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dampen one swab end barely with the kit&apos;s own fluid, never dripping, and draw it along the grooves of the left block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too much fluid carries dirt down between the grooves and the block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a fresh swab end, barely damp, and draw it along the grooves of the right block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it dry, then look again under magnification.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where dirt still sticks, brush that groove lightly with the stiff brush, along the groove only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go from gentle to firm: the stiff brush can mark a groove that the swab would have cleaned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at every groove under magnification once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After four rounds the rest is not for brushes: leave it and have the splicer checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brush all grooves once more with the soft brush, so that no lint stays behind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower the clamps, close the cover and watch a test splice: the fibres must lie level in all grooves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was in the grooves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grooves that were dirty, by number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean camera lenses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleans the lenses through which the splicer sees the fibres; a dim or spotted view spoils both alignment and the loss estimate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tray for the electrodes, so that left and right are not mixed up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A spotted lens makes the splicer align by a wrong picture and estimate losses it cannot see.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc residue films the lenses slowly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switch the splicer off and unplug it: mains lead out, battery out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take both electrodes out and lay them down so that each goes back to its own side. Touch no tip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The swab would bend the tips, and a bent tip bends the arc.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dampen one swab end barely with alcohol and wipe the first lens in small circles from the middle outward.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pressure: a lens shifted by a hair needs the workshop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry the first lens in circles with a second, dry swab end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a fresh swab end, barely damp, and wipe the second lens in circles from the middle outward.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry the second lens in circles with another dry swab end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at both lenses with good light from the side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Are both lenses free of spots, film and lint?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put both electrodes back, each on its own side, and fasten them as the splicer&apos;s manual says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait until all alcohol has dried, close the cover, then battery in, mains lead in, and switch on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load two prepared fibres and look at both camera views.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If spots stay although the lenses are clean, the diagnostic run tells whether it is the mirror or the light.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the picture even, without spots that stay when the fibre moves?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was on the lenses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean the stripper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brings coating fragments out of blades, heating area and grip; a fragment nicks the glass, and nicked fibre breaks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heating parts of strippers and sleeve ovens burn the skin: switch them off and let them cool before cleaning. Follow local codes and licensed practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Small brush, kept for the stripper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Web-type ribbon and ribbonised loose tubes shed fragments at every strip; the next ribbon is pulled over them and breaks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fragments build up under the blades and nick the fibre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Residue hardens on the heating area.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switch the stripper off and let the heating area cool until it can be touched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brush blades, heating area and rubber grip, outward, over the shard bin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at blades, heating area and grip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is everything free of fragments and residue?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loosen stuck residue with a swab end dampened barely with alcohol: heating area and grip. Never wipe along the blade edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry both with the other, dry swab end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brush once more, or blow it out with air, so that no lint stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wear eye protection when you use air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down anything worn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blades and grip look</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>help</name>
    <message>
        <source>Today, F2: which fibre is next, and is this loss good enough?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kit, F3: how worn is each splicer, cleaver and stripper?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care, F4: what is due, and when can this crew do it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drift, F5: did a machine change, since when, and which part?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout, F6: is the job complete, and what does the client get?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+K finds every action, tool and job by a few letters. Ctrl+Z takes back what was entered in this sitting. The foot of the rail says when the last entry was on disk: what is not shown as saved there is not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next fibre is chosen already. Type the digits the splicer shows: 4 is 0.04 dB, 12 is 0.12. Enter saves and goes on. A comma or a point means dB as written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On a ribbon, Space goes to the next fibre and one Enter saves them all; or paste the losses of the whole ribbon.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accept: within the limit of the job.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>re-splice: over the limit. R begins the next attempt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high: over the limit after as many attempts as the rule asks for. K keeps it with a note; above the ceiling nothing is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Digits on a fibre that has a loss correct it; V voids it with a reason. Nothing is overwritten: the book keeps every version.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is due stands in four queues, named by when a crew can do it: Hold, before the next splice; Next gap, before the next closure; Shift end; Bench day, at the depot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each item says why, since when, on what it is based and what happens if it is left. It goes away by doing the work, never by a tick. A hold can be overridden with a name and a reason; that is written into the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A care card leads through the work step by step, gentle before drastic, cautions first. It can be paused and taken up again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electrodes carry high voltage: switch off and unplug before you reach in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An arc ignites gas: test the air in manholes and pits. Let alcohol dry first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre ends are glass needles: eye protection, shard bin, no food at the bench.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treat every fibre as live: never look into an end or a connector.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local codes, the maker&apos;s manual and licensed practice go before any card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screen compares what was planned with what was spliced and lists every exception: over limit, missing, calibration owed, hold overridden, corrected afterwards. Each needs a disposition with a name and a reason before a final record can be issued.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record is a folder: pages, tables, data, a manifest that names every file with its SHA-256, and a signature over the manifest. A final record is never changed; a later one supersedes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How a stranger verifies it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With this program: Verify a record on the Closeout screen, or: arcw verify FOLDER</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without it: the SHA-256 of each file must be the one in manifest.json (sha256sum), the signature manifest.sig must fit manifest.json (openssl), and the key must be the one the crew gave: device.pem. The three commands are in the README.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever receives a record should get the crew&apos;s device.pem from the crew itself, not together with the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laptops without a network hand over work in a satchel: one file on a stick. It holds the journal of the logbook, sealed and signed by the device that packed it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pack: on the laptop that has the work. A passphrase keeps strangers out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in: on the other laptop. The first time, compare the key of the sender by voice or on paper, then accept the device.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Satchels may come in any order and more than once: nothing is lost and nothing is doubled. Where two crews changed the same thing, the later version shows, both are kept, and the pair is listed for a person to look at.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The loss pad</source>
        <translation>Das Dämpfungsfeld</translation>
    </message>
    <message>
        <source>Care and safety</source>
        <translation>Pflege und Sicherheit</translation>
    </message>
    <message>
        <source>Closeout and verifying</source>
        <translation>Abschluss und Prüfung</translation>
    </message>
    <message>
        <source>Handover</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>One logbook, six screens. Each answers one question.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Logbook, F7: what was written, when, by whom and from where?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screens</source>
        <translation>Die Ansichten</translation>
    </message>
</context>
<context>
    <name>phrases</name>
    <message>
        <source>Hold</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Next gap</source>
        <translation>Nächste Pause</translation>
    </message>
    <message>
        <source>Shift end</source>
        <translation>Schichtende</translation>
    </message>
    <message>
        <source>Bench day</source>
        <translation>Werkstatttag</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>splicer</source>
        <translation>Spleißgerät</translation>
    </message>
    <message>
        <source>cleaver</source>
        <translation>Trenngerät</translation>
    </message>
    <message>
        <source>stripper</source>
        <translation>Absetzgerät</translation>
    </message>
    <message>
        <source>Stabilise electrodes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the blade to its next height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look into it and note it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilise electrodes, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the blade to its next height, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look into it and note it, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrate the arc, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean cleaver blade, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the blade to its next place, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean clamp chips, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean cleaver pads and anvil, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diagnostic run, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace electrodes, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean V-grooves, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean camera lenses, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean the stripper, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order electrodes for {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order a blade for {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a new blade, {tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after each strip ({~source})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{~care}&quot; of {@when} makes it compulsory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{~care}&quot; did not reach its end by {@when}, after as many rounds as are allowed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the care record of {@when} and nothing after it that closes this ({~source})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splices before it are made with a tool nobody has proved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no calibration that counts since {@when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>owed from {#celsius} °C or {#hpa} hPa on (settings; common practice)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no calibration that counts since {@when}; owed from {#celsius} °C or {#hpa} hPa on (settings; common practice)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no calibration that counts since {@when}; owed after 1 day (setting; common practice)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no calibration that counts since {@when}; owed after {#count} days (setting; common practice)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splices until then carry &quot;calibration owed&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arcs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibres cleaved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibres stripped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} {~unit}, every {#every}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} {~unit} since {@when}; the card says every {#every} ({~source})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} {~unit} in the book, and no such care in it; the card says every {#every} ({~source})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 day, every {#every} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} days, every {#every} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 day, every 1 day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} days, every 1 day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last done {@when}; the card says every {#every} days ({~source})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first used {@when}; the card says every {#every} days ({~source})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last done {@when}; the card says every 1 day ({~source})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first used {@when}; the card says every 1 day ({~source})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>also: {~why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place or the weather changed on {@when} and the arc was not calibrated since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{~care}&quot; was done on {@when} and the arc was not calibrated since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the calibration of {@when} does not count: {~why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arc power or position was not adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arc power was not adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arc position was not adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fibre was not of the type that counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of fibres was not the one that counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the electrodes were not stabilised before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 day without an arc before {@when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} days without an arc before {@when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 day without an arc since {@when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} days without an arc since {@when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#jump} °C away from {#from} °C, where the arc was last in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#jump} hPa away from {#from} hPa, where the arc was last in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {#arcs} arcs left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {#arcs} arcs left ({#low}-{#high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {#arcs} arcs left at {#perday} arcs a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {#arcs} arcs left ({#low}-{#high}) at {#perday} arcs a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#used} arcs since they were new; about {#limit} is usual (common practice)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#used} arcs since they were new; about {#limit} is usual (common practice); the loss forecast says {~left}, 80 % interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the loss forecast puts their end here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#used} arcs of about {#limit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They come to their end with no new pair in the case.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the blade stands at its last place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {#fibres} fibres left on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {#fibres} fibres left on this blade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height {#height} of {#heights}, position {#position} of {#positions}, {#used} fibres cleaved here of about {#limit} (common practice)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no fresh edge left: every further cleave is at a dull place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>electrodes</source>
        <translation>Elektroden</translation>
    </message>
    <message>
        <source>cleaver blade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splices through this groove stay high, and some will have to be made again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Losses keep rising and scattering until the arc fails.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All grooves stay high until the arc fits the place again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poor cleaves keep coming, on every splicer this cleaver serves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fault travels with the fibre; care of the tools only costs time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The charts cannot tell luck from drift while the cause is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{splicer}, {mode}: {~chart} signal at arc {#arc}, began about arc {#began} ({#low}-{#high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{splicer}, {mode}: {~chart} signal at arc {#arc}, began about arc {#began} ({#low}-{#high}); {~evidence}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pair a cleaver with {label} in the kit to put it on its list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the blade is used up, fit a new one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a fibre lot is not cured by care of a tool: try a few splices on another splicer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every step was tried: fit a new blade or take the cleaver out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every step was tried: take the splicer out of service and have it checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care} on {@when} changed nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care} on {@when} made it worse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care} on {@when} helped in part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care} on {@when} helped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care} on {@when} cannot be judged yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaning the grooves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaning the clamp chips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaning the lenses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the arc calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>replacing the electrodes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the diagnostic run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaning pads and anvil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaning the blade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turning the blade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>raising the blade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electrodes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>V-grooves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clamp chips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Camera lenses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads and anvil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stripper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care}: tried, not reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care}: height {#height}, position {#position}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care}: height {#height}, position {#position} ({detail})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Environment changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Environment changed: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaver {label} from now on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prepares for {label} from now on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counter corrected to {#count}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry changed: {~text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered in the kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back in service</source>
        <translation>Wieder in Betrieb</translation>
    </message>
    <message>
        <source>a tool that is gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibrate the arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>replace electrodes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clean camera lenses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clamp clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lens clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arc calibration</source>
        <translation>Lichtbogenkalibrierung</translation>
    </message>
    <message>
        <source>electrode replace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaver clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blade clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blade rotate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blade raise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stripper clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>environment change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mean of 1 splice is {#mean} dB, the limit is {#limit} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mean of {#count} splices is {#mean} dB, the limit is {#limit} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} of {#planned} planned splices is missing: {~which}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} of {#planned} planned splices are missing: {~which}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is spliced yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre {numbers}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibres {numbers}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 splice is not in the splice plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} splices are not in the splice plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 splice was made while an arc calibration was owed ({~why})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} splices were made while an arc calibration was owed ({~why})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 splice was made on hold; {by}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} splices were made on hold; {by}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 fibre measured from one end only at {#nm} nm: {fibres}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} fibres measured from one end only at {#nm} nm: {fibres}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} fibres measured from one end only at {#nm} nm: {fibres} and {#more} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 splice has no loss measured from both ends, though the rule asks for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} splices have no loss measured from both ends, though the rule asks for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading of groove {#groove} was corrected after the fact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading of groove {#groove} was corrected after the fact: {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} first attempts of groove {#groove} are written down; the latest counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groove {#groove}: {#loss} dB after 1 attempt, limit {#limit} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groove {#groove}: {#loss} dB after {#attempts} attempts, limit {#limit} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over ceiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean over limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration owed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Override used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One-way only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corrected after the fact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No closure</source>
        <translation>Ohne Muffe</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accepted with exceptions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No link budget: the length of cable {label} is not written down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No link budget: no cable of this job is written down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No link budget: nothing is spliced yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No link budget: {~why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One fibre through all cables and closures of the job in line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attenuation and connector loss are assumed values, not measured here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre</source>
        <translation>Faser</translation>
    </message>
    <message>
        <source>splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>connectors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample: single fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample: ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample: two-way mean 0.10 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record of job {job}, draft, made {date}: all {#files} files are as signed by this device (key {key}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record of job {job}, final no. {#number}, made {date}: all {#files} files are as signed by this device (key {key}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record of job {job}, draft, made {date}: all {#files} files are as signed by the known device {name} (key {key}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record of job {job}, final no. {#number}, made {date}: all {#files} files are as signed by the known device {name} (key {key}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record of job {job}, draft, made {date}: all {#files} files are as signed by a device that is not in your list of known devices (key {key}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record of job {job}, final no. {#number}, made {date}: all {#files} files are as signed by a device that is not in your list of known devices (key {key}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The logbook verifies: {#rows} journal rows of 1 device, {#arcs} arcs, {#readings} readings; journal head {head}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The logbook verifies: {#rows} journal rows of {#devices} devices, {#arcs} arcs, {#readings} readings; journal head {head}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checking the pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checking the journal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all grooves together: {#before} -&gt; {#after} dB since arc {#arc} ({#arcs} arcs)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grows: {#per} dB per 100 arcs since about arc {#arc}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove {#groove}: {#before} -&gt; {#after} dB (n = {#n}), the others {#others} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleave angles: mean {#before} -&gt; {#after} degrees since arc {#arc}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature {#before} -&gt; {#after} degrees C at arc {#arc}, where the step is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#hours} hours idle before arc {#arc}, where the step is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step at arc {#arc}, right after {~action}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no job began near here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>began with the job&apos;s first splice, arc {#arc}: {#before} -&gt; {#after} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#arcs} arcs since the electrodes were new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the splicer&apos;s counter stood at {#arcs} arcs: the electrodes are not older</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{label}, with the same cleaver: {#rise} dB (n = {#n})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{label}, on the same job, is up too: {#rise} dB (n = {#n})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{label}, on the same job, is not clearly up: {#rise} dB (n = {#n})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no cleave angles were logged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it was gone after {~action}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grooves {#one} and {#other} are dirty, likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groove {#groove} is dirty, likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The V-groove or a clamp is dirty, likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The electrodes are worn, likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The arc calibration is off, likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cleaver cuts badly, likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fibre of this job differs, likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something may have changed; no cause leads clearly yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch the next 25 arcs: this may have been luck.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No clear lead, so the gentlest first. {~advice}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean the V-grooves and clamps: quick, and it undoes nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace the electrodes, stabilise them, then calibrate the arc.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrate the arc until power and position are both adequate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean the cleaver&apos;s pads and anvil, then the blade; rotate the blade only if that does not help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the splicer alone: make a few splices of this fibre on another splicer to be sure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured against estimated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the look at the charts was stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove_clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clamp_clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lens_clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arc_calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>electrode_replace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stabilise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diagnostic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleaver_clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blade_clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blade_rotate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blade_raise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stripper_clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>environment_change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single groove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleave angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>resplice rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lone splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splicer {label}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splicer {label} &quot;{nickname}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splicer {label} taken out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splicer {label} &quot;{nickname}&quot; taken out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaver {label}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaver {label} &quot;{nickname}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaver {label} taken out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaver {label} &quot;{nickname}&quot; taken out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stripper {label}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stripper {label} &quot;{nickname}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stripper {label} taken out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stripper {label} &quot;{nickname}&quot; taken out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaver paired with a splicer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counter set to {#count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counter set to {#count}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job {label}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Job {label}, {title}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cable {label} of 1 fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cable {label} of {#count} fibres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closure {label}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closure {label}, 1 splice planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closure {label}, {#count} splices planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc without a reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splice of fibre {fibre}: {#loss} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splice of groove {#groove}: {#loss} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-splice of fibre {fibre}: {#loss} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-splice of groove {#groove}: {#loss} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splice of {#count} fibres: {#low} dB to {#high} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-splice of {#count} fibres: {#low} dB to {#high} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voided fibre {fibre}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voided fibre {fibre}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voided groove {#groove}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voided groove {#groove}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading of fibre {fibre}: {#loss} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading of groove {#groove}: {#loss} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured fibre {fibre} at {#nm} nm: {#one} dB and {#other} dB, both directions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured fibre {fibre} at {#nm} nm: {#one} dB, one way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured fibre {fibre} at {#nm} nm: nothing, one way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groove clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clamp clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lens clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electrode replace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diagnostic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaver clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade rotate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade raise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stripper clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Environment change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Pflege</translation>
    </message>
    <message>
        <source>Groove clean: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clamp clean: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lens clean: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electrode replace: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stabilise: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diagnostic: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleaver clean: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade clean: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stripper clean: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Environment change: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc calibration, adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc calibration, adequate: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc calibration, not adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc calibration, not adequate: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arc calibration: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade rotate, height {#height} position {#position}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade rotate, height {#height} position {#position}: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade rotate: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade raise, height {#height} position {#position}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade raise, height {#height} position {#position}: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blade raise: {detail}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care} under way, step {#step}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care} finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care} left off at step {#step}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care card {~care}, version {#version}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold overridden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold overridden: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Baseline moved for {mode}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Baseline moved for {mode}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signal dismissed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signal dismissed: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signal taken up again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signal taken up again: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exception decided: accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exception decided: rejected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exception decided: {disposition}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record {#number} issued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record {#number} issued, supersedes {#old}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting {key}: {value}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting {key} emptied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attachment {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back: undone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rescued: {~text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>re-spliced: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected from {#loss}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected from {#loss} ({before})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this tool is not in the kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one of the kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a calibration without its results proves nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power, position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down arc power and arc position, each adequate or not-adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fibre of the calibration is not named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down its type, for example G.652.D, and how many fibres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new blade begins at height 1, position 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set it there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a note needs words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what was seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an environment change is noted at a splicer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no care called &quot;{name}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See the list of care cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{~card}&quot; is care of a {~tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another tool or action</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{~card}&quot; is a card for a {~tool}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{value}&quot; is none of flat, web, ribbonised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{value}&quot; is not a number from {#least} to {#most}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{value}&quot; is not a whole number from {#least} to {#most}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the setting as it was or give a value in range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{~field}&quot; is not written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill it in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{value}&quot; is none of the choices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{value}&quot; is not a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it with digits and a point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{~field}&quot; is a whole number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{value}&quot; is out of range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check what the tool shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this step has no field &quot;{key}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this screen is not a step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acknowledge it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the timer was not started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time is not over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait until the timer ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this step wants an answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this screen asks nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this step asks nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is to be written down here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is the first screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this run is closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the card anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this run belongs to another tool or card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it from its tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the card was changed since this run began (version {#old}, now {#new})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the run stands at a step the card does not have</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is nothing to acknowledge here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on with the step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cautions were not acknowledged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the materials were not checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read and acknowledge them first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this step has no timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the card is not done to its end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish its steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is neither adequate nor not-adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down what the splicer showed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a calibration has two results, arc power and arc position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a blade stands at a height and a position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write down both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this blade has {#heights} heights of {#positions} positions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all places of this blade are used up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the blade is raised only after all {#positions} positions at this height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all {#positions} positions at this height are used, so the blade is raised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a blade goes from place to place without skipping any</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the blade stands at height {#height}, position {#position}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next place is height {#height}, position {#position}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a new blade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped; nothing was written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>job {label} has no splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A final record needs at least one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 exception waits for a disposition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} exceptions wait for a disposition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decide on each with a name and a reason, then issue the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a final record needs the name of who issues it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no job {label} in this logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It holds no job yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It holds {labels}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the job is not in this logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this program does not issue final records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a draft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>care cards cannot be read or changed here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct it and save again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the record has no identity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {field} is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {field} is longer than {#limit} bytes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {field} holds a line break or another control character</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {field} is not UTF-8 text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {field} holds a zero byte</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time lies outside the years 1970 to 9999</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the offset from UTC is more than 14 hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {field} is {#value}, not between {#low} and {#high}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the care action is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the care action is a key of small letters, digits and underscores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an estimated loss cannot be negative</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a loss above 50 dB is not a splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cleave angle is not between 0 and 90 degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the average limit must be above 0 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the limit per splice must be above 0 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ceiling lies below the limit per splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ceiling is above 50 dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a single-fibre splicer has one groove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>splicer and cleaver are the same tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a counter correction needs a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cable length is not between 0 and 20,000 km</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the plan has more than 6,912 splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre {#number} is planned twice on one side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an arc joins 1, 2, 4, 8, 12 or 16 fibres, not {#count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the temperature is not between -60 and 85 degrees Celsius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the humidity is not between 0 and 100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pressure is not between 300 and 1,100 hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove {#groove} in an arc of {#count} fibres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two readings of one groove in one arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the readings are not in groove order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither direction was measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a measured loss beyond 50 dB is not a splice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the card version is negative</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only an arc calibration has a calibration result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is already a tool called &quot;{label}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is already a job called &quot;{label}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is already a closure called &quot;{label}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is already a cable called &quot;{label}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {~what} is not in this logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add it first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the splice is not in this logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>channel {#channel} is beyond the {#count} fibres of this arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the channel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an issued record is never changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issue a new one instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is to be taken back is not in this logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an issued record cannot be taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issue a new one that supersedes it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the copy was stopped; nothing was left behind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook stayed busy for a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try again later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is a file of that name already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another name for the copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the copy could not get its name: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the card; until then the shipped one is used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no card {name} of version {#version}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no shipped card {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask whoever issued the record for a fresh copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder cannot be read: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place for the record is taken by something that is no folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder is not empty and holds no closeout record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another folder; nothing was written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder holds a final record, and a final record is never changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder holds a file that is not part of the draft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move it elsewhere or choose another folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the signing library does not start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder cannot be made: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the record cannot be put in its place: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} is not an ordinary file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} has {#bytes} bytes, the manifest says {#said}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} was changed: its SHA-256 is not the one in the manifest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} does not belong to the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>manifest.sig is no signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>manifest.json or manifest.sig was changed: the signature does not fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the column key cannot be used: {~why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the key and try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file has no column &quot;{name}&quot;, which the column key names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the key that fits this file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check that you may read it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file holds zero bytes and is no text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the log as CSV and import that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the scenario Harrow Ridge is not in this program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the device key cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the file away; a new key is then made, and others must accept it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the device key cannot be written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no place for the device key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set ARCWRIGHT_HOME to a folder of yours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the list of known devices has a line that is no device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a device needs a name of one line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the list of known devices cannot be written: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the record cannot be written as JSON: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>manifest.json cannot be read: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the record was made by a newer program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verify it with that version or later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the workbook cannot be made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the workbook cannot be written: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the import was stopped; nothing was changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is not a logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a file made by Arcwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook was written by a newer Arcwright (schema {#theirs}, this one knows {#ours}); nothing was changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Install the newer program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook has an older schema and is opened for reading only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it once for writing; it is brought up to date then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a second writer was asked for without a first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make one with &quot;arcw new&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a folder, not a logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook may not be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask its owner for the right to read it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook may not be written to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it for reading only, or copy it to a folder you may write to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder for the logbook does not exist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the folder first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is not an ordinary file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is larger than it can be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the satchel was packed by a newer Arcwright (schema {#theirs}, this one knows {#ours}); nothing was taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask for the satchel again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the satchel comes from a device that is not accepted yet: &quot;{name}&quot;, key {key}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare the key with its owner, then accept the device; nothing was taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook file was taken away or replaced meanwhile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the satchel in once more; nothing is doubled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a row of the satchel is missing or out of order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is not a satchel this program can read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a file made by &quot;arcw pack&quot;, perhaps with a newer program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free some space and try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free some space and save again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free some space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is not enough memory to seal the satchel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the label of the satchel is damaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is not enough memory to open the satchel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the passphrase does not open the satchel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder for temporary files cannot be written to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set TMPDIR to a folder with room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the satchel cannot be written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check that there is room and that you may write there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the satchel could not get its name: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such satchel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the satchel cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the satchel is sealed with a passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scenario file, {where}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the scenario file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook is open for reading only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close it where it is being written to, then open it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another file was put in the place of the logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was saved; put the right file back or open it anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook file was taken away; this entry is not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it back or plug the stick in again, then save once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another program keeps replacing the logbook&apos;s files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close that program; this entry may not be saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the key &quot;{key}&quot; is there twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep one of the two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is not JSON</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the brackets, commas and quotes there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a number is beyond every range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct the number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the check was stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a backup that verifies, or rescue what is readable into a new logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder of the logbook cannot be written to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook cannot be opened: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another program writes into this logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another program writes into this logbook (process {#id})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close it there, or open the logbook for reading only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook&apos;s lock file keeps changing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no font is installed, so the pages would be empty boxes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Install fonts-b612 or fonts-dejavu-core</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pages cannot be written: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the stored chart state is of another version</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the stored chart state cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>analyse the whole logbook again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#loss} dB is more than any splicer shows. Type the loss again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#loss} dB is unusual. Enter again if the splicer shows it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#loss} dB is unusual. Enter again if the splicer shows it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#loss} dB is unusual. Enter again if the splicer shows it, or type {#other}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#loss} dB is unusual. Enter again if the splicer shows it, or type {#other}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A splicer never estimates a negative loss. Type the loss again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a number. Type the digits of the loss.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two decimal points. Type the loss again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is more than any splicer shows. Type the loss again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A loss has at most three places, 0.001 dB. Type it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is typed is not saved yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter saves it, Esc drops it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no loss is typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the digits first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a correction is saved on its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is the last fibre here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter saves them all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} values, but only {#left} fibres are left here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no fibre to enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a job and a closure first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the digits, then Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a splice over the limit is kept only with a note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say why it is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is typed cannot be kept with a note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A note is for the last allowed attempt, over the limit and below the ceiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no splice to keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a splice over the ceiling of {#ceiling} dB is never kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rule asks for {#attempts} attempts before a high splice is kept, this was number {#number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-splice it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing here is over the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on with the next fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this fibre has no reading to void</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one with the arrow keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a reading is voided only with a reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this fibre has no splice yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type its loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not saved; what you typed is still here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not saved; this step is still here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not saved; your text is still here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the record was not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press Enter to try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a usual loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>value {#number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was taken; correct it and paste again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no loss in the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the values first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a fibre number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre numbers run from 1 to 6912, not {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a fibre number is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than 6912 fibres in one list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something follows &quot;straight&quot;; parts are separated by a semicolon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two instructions in one part; parts are separated by a semicolon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side A has {#a} fibres and side B {#b}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre {#number} of side A is planned twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre {#number} of side B is planned twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a column is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the header has no fibre_a and fibre_b</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin the file with the line fibre_a,fibre_b</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it like &quot;1-144 straight&quot; or &quot;1-12 to 25-36; 13 to 40&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part {#number}, &quot;{text}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part {#number}, &quot;{text}&quot;, side A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part {#number}, &quot;{text}&quot;, side B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line {#number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line {#number}, {column}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cable A has {#have} fibres, the plan names fibre {#named}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cable B has {#have} fibres, the plan names fibre {#named}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the plan has {#splices} splices and the trays hold {#places}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add trays or plan fewer splices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no colour order &quot;{name}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take one of: {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colour order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time &quot;{text}&quot; cannot be read: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it like 2031-03-03T07:00:00Z or 2031-03-03T08:00:00+01:00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the job needs a label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the closure needs a label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is a job {label} already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this job has a closure {label} already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose it above to add a closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{field} must be a number between {#least} and {#most}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no splicer in the kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add one on the Kit screen, F3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no splicer is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no cleaver in service to pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a cleaver first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no care card for this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another one below the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the charts cannot be written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a folder you may write to, and a name that ends in .svg or .png</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder for the pictures cannot be made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a picture cannot be written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a folder you may write to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look whether the disk is full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#rows} rows step back in time (first: line {#line}); they were put where their time belongs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#arcs} arc has fewer readings than fibres (first: line {#line})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#arcs} arcs have fewer readings than fibres (first: line {#line})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>numbers are read with a decimal comma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a number; in a file with commas between columns the decimal mark is a point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a whole number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the loss is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the splicer is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rows of this arc do not agree: {~why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is there with another {column}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this splice is there with another {column}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another row of the file has the same splice with another {column}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook has this arc: {~why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook has this splice with another {column}; correct it there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Imported {#fibres} fibre splice of {#arcs} arc from {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Imported {#fibres} fibre splices of {#arcs} arc from {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Imported {#fibres} fibre splices of {#arcs} arcs from {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Imported {#count} measured loss from {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Imported {#count} measured losses from {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set aside {#count} row of {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set aside {#count} rows of {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the equipment is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the action &quot;{name}&quot; is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fibre is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wavelength is missing or no whole number of nanometres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the closure is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this measurement is there with other values; correct it there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is not UTF-8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is not UTF-8; it looks like {guess}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save it as UTF-8 and import that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line is longer than 64 KiB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a quotation mark is opened and never closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a quotation mark stands where none may stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the row is not UTF-8 text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read as UTF-16</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>columns are separated by semicolons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>columns are separated by tabs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file has no column &quot;{name}&quot;; it has: {columns}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name the column so, or give a column key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the column &quot;{name}&quot; is there twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove one of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>columns that are not read: {columns}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not one of the first 1,000 rows can be read; the first: {~why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check that this is the right file; nothing was changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the row has {#fields} fields, the header names {#named}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the row has {#fields} fields, the header names {#named}; a decimal comma without quotes does that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook file was taken away or replaced during the import</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import the files once more; what is known is not doubled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{label}&quot; is a {~kind} in the kit, not a {~wanted}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{label} splices {#count} fibres in one arc; the kit said {#old} and was brought up to date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{label}&quot; is a {~kind}; {action} is not for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no tool called &quot;{label}&quot; in the kit and the action does not tell its kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no closure called &quot;{label}&quot;; import the splice log first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>several jobs have a closure called &quot;{label}&quot;; add a column &quot;job&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clamps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grooves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lenses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First entry from {device}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made this logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outcome</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>covers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swab ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading of fibre {~fibre} was corrected after the fact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading of fibre {~fibre} was corrected after the fact: {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} first attempts of fibre {~fibre} are written down; the latest counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB after 1 attempt, limit {#limit} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB after {#attempts} attempts, limit {#limit} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB after 1 attempt, limit {#limit} dB; {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB after 1 attempt, limit {#limit} dB; kept: {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB after {#attempts} attempts, limit {#limit} dB; {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB after {#attempts} attempts, limit {#limit} dB; kept: {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groove {#groove}: {#loss} dB after {#attempts} attempts, limit {#limit} dB; {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groove {#groove}: {#loss} dB after {#attempts} attempts, limit {#limit} dB; kept: {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB two-way mean after 1 attempt, limit {#limit} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB two-way mean after {#attempts} attempts, limit {#limit} dB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB two-way mean after 1 attempt, limit {#limit} dB; {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB two-way mean after 1 attempt, limit {#limit} dB; kept: {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB two-way mean after {#attempts} attempts, limit {#limit} dB; {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB two-way mean after {#attempts} attempts, limit {#limit} dB; kept: {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#number} {~colour}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#number} {~colour} with tracer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#number} {~colour}, unit {#unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#number} {~colour} with tracer, unit {#unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blue</source>
        <translation>blau</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>orange</translation>
    </message>
    <message>
        <source>green</source>
        <translation>grün</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>braun</translation>
    </message>
    <message>
        <source>slate</source>
        <translation>grau</translation>
    </message>
    <message>
        <source>white</source>
        <translation>weiß</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rot</translation>
    </message>
    <message>
        <source>black</source>
        <translation>schwarz</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>gelb</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violett</translation>
    </message>
    <message>
        <source>rose</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>aqua</source>
        <translation>türkis</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>türkis</translation>
    </message>
    <message>
        <source>natural</source>
        <translation>natur</translation>
    </message>
    <message>
        <source>lime</source>
        <translation>hellgrün</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>grau</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>unknown colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove kit: soft brush, stiff brush, cleaning fluid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stripper brush</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one lasts about 1 run; {#ever} in the logbook, about {#ahead} in the next {#days} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one lasts about {#lasts} runs; {#ever} in the logbook, about {#ahead} in the next {#days} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for about 1 care in the next {#days} days, as many as the last {#days} days had or called for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for about {#count} cares in the next {#days} days, as many as the last {#days} days had or called for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~ribbon} (cable {label}) sheds fragments at every strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~ribbon} (cable {label}) shed fragments at every strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~ribbon} sheds fragments at every strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~ribbon} shed fragments at every strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flat ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>web-type ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ribbonised loose tubes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 such strip since the last clean, by the crew; after each strip ({~source})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} such strips since the last clean, by the crew; after each strip ({~source})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a mass splicer is calibrated with as many fibres, and of the type, as it is to splice (common practice)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 fibre at once, no mode named, from {@when} on; the arc was calibrated for {~made}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} fibres at once, no mode named, from {@when} on; the arc was calibrated for {~made}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 fibre at once, mode {mode}, from {@when} on; the arc was calibrated for {~made}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} fibres at once, mode {mode}, from {@when} on; the arc was calibrated for {~made}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 fibre of {type}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} fibres of {type}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in the logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in the logbook since &quot;{~care}&quot; of {@when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in the logbook since the signal of {@when}, which asks for it first: {~why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care}; before gentler care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{~care}; before gentler care: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>date and time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibres in the arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arc counter of the splicer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre on side A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre on side B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>splice mode</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleave angle left, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cleave angle right, degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who spliced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>detail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who did it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loss from A to B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loss from B to A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tables cannot be read here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no column &quot;{name}&quot; of ours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;header&quot; is not a list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file cannot be read any further</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the column key has no name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give it one, like &quot;Crew B&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold overridden by {who}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold overridden by {who}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exception {key} accepted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exception {key} rejected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exception {key} accepted by {who}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exception {key} rejected by {who}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record {#number} issued by {who}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeout record {#number} issued by {who}, supersedes {#old}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column key {name} saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column key {name} removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-aside row opened again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-aside row mended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-aside row left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put aside: {~text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept: {~text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brought back: {~text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split: attempt {#attempt} of fibre {#fibre} belongs to fibre {#other}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split: attempt {#attempt} of fibre {#fibre} belongs to fibre {#other}, with its whole ribbon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this program does not hand over or keep copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the record was edited or settled meanwhile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the list again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it again and look at the list once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook is damaged ({~what}) and is open for reading only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restore a backup, or rescue what is readable into a new logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a page cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a page could not be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a page could not be read while writing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is cut off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the end of the journal cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a part of the logbook file is damaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#there} {~what} can be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#there} of {#all} {~what} can be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The logbook is open for reading only: another program writes into it, or its folder cannot be written to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder for backups cannot be made: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another folder in the settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a satchel of one job cannot be packed yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the satchel comes from a device that is not accepted yet and cannot be kept: {~why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make room, or accept the device and take the satchel in again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this file is not a satchel that waits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the satchel is gone already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is not the key of a device</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{~one}&quot; ({device}) shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{~one}&quot; ({device}) shows; &quot;{~other}&quot; ({other}) was written without knowing of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is not a JPEG or PNG picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a photo, or write a note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is larger than {#mb} MB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the photo smaller and add it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the search was stopped; nothing was changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved from fibre {fibre}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved to fibre {fibre}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the clock stepped back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this fibre has no attempts to take apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre {#fibre} has no attempt {#attempt}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its last one is {#attempt}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre {#fibre} is not in this closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the reading is of this fibre already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the number of the fibre it belongs to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>that ribbon has fewer fibres than this arc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Void the arc and type it again there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this fibre has no such attempt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at its attempts again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one arc cannot splice a fibre twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move or void the reading that fibre has of the same arc first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 such strip since the last clean, by the crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} such strips since the last clean, by the crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for about 1 care in the next {#days} days, as many as the last {#before} days had or called for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for about {#count} cares in the next {#days} days, as many as the last {#before} days had or called for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one lasts about 1 run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one lasts about {#runs} runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#ever} in the logbook, about {#ahead} in the next {#days} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the arc was calibrated for {~made}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} fibres at once, mode {mode}, from {@when} on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#count} fibres at once, no mode named, from {@when} on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 fibre at once, mode {mode}, from {@when} on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 fibre at once, no mode named, from {@when} on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before gentler care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before gentler care: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no room for a readable copy: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only pictures named .jpg, .jpeg or .png are taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look whether you may read it, or choose another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file cannot be written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a folder you may write to, with room on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the note is empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it, or Esc leaves it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the note is not saved yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Enter saves it, Esc once more drops it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is no day or stretch of days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type 2031-03-03, 2031-03, 7 d or 2031-03-03 to 2031-03-15</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>photos and notes belong to a splice, a closure or a care record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the date &quot;{text}&quot; can be read in more than one way; say in the key under &quot;dates&quot; how</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time &quot;{text}&quot; cannot be read: {~why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it does not begin with a date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the year needs four digits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such month; are day and month the other way round?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time of day is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hour does not go with AM or PM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the row has no loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the set-aside rows of {file} are read again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-aside row mended: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change something, or leave with Esc</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose it above to change it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still: {~why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>attempt</source>
        <translation>Versuch</translation>
    </message>
    <message>
        <source>temperature, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>humidity, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure, hPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wavelength, nm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treat every fibre as live: never look into a fibre or connector (IEC 60825-2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre ends are glass shards: eye protection, a shard bin, no food at the bench.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splicer electrodes carry high voltage: power off and unplug before touching them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol is flammable and an arc ignites gas: ventilate, let it dry, test the air in manholes and pits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow local codes and licensed practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power adequate, position adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power adequate, position not adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power not adequate, position adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power not adequate, position not adequate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 fibre, 1 run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 fibre, {#runs} runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#fibres} fibres, 1 run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{#fibres} fibres, {#runs} runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height {#height}, position {#position}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On no span</source>
        <translation>Auf keiner Strecke</translation>
    </message>
    <message>
        <source>No link budget: the length of span {label} is not written down.</source>
        <translation>Keine Bilanz: die Länge der Strecke {label} ist nicht notiert.</translation>
    </message>
    <message>
        <source>No link budget: these closures are on no span.</source>
        <translation>Keine Bilanz: diese Muffen liegen auf keiner Strecke.</translation>
    </message>
    <message>
        <source>One fibre from {from} to {to}.</source>
        <translation>Eine Faser von {from} bis {to}.</translation>
    </message>
    <message>
        <source>As spliced: the mean of both directions where a splice was measured, else the splicer&apos;s estimate.</source>
        <translation>Gespleißt: das Mittel beider Richtungen, wo ein Spleiß gemessen wurde, sonst die Schätzung des Spleißgeräts.</translation>
    </message>
    <message>
        <source>Span {label} with 1 closure</source>
        <translation>Strecke {label} mit 1 Muffe</translation>
    </message>
    <message>
        <source>Span {label} with {#count} closures</source>
        <translation>Strecke {label} mit {#count} Muffen</translation>
    </message>
    <message>
        <source>the span has no label</source>
        <translation>die Strecke hat keine Kennung</translation>
    </message>
    <message>
        <source>this job has a span {label} already</source>
        <translation>dieser Auftrag hat schon eine Strecke {label}</translation>
    </message>
    <message>
        <source>this job has no closure {label}</source>
        <translation>dieser Auftrag hat keine Muffe {label}</translation>
    </message>
    <message>
        <source>Write the closures like &quot;HR-01 to HR-05, HR-07&quot;</source>
        <translation>Muffen wie &quot;HR-01 to HR-05, HR-07&quot; schreiben</translation>
    </message>
    <message>
        <source>closure {label} is named twice</source>
        <translation>die Muffe {label} ist zweimal genannt</translation>
    </message>
    <message>
        <source>closure {label} is on span {span} already</source>
        <translation>die Muffe {label} liegt schon auf der Strecke {span}</translation>
    </message>
    <message>
        <source>A splice counts in one span: leave the closure out of one of them</source>
        <translation>Ein Spleiß zählt in einer Strecke: die Muffe aus einer davon herauslassen</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a length in km</source>
        <translation>&quot;{text}&quot; ist keine Länge in km</translation>
    </message>
    <message>
        <source>this job has no cable {label}</source>
        <translation>dieser Auftrag hat kein Kabel {label}</translation>
    </message>
    <message>
        <source>Make the cable first</source>
        <translation>Zuerst das Kabel anlegen</translation>
    </message>
    <message>
        <source>the header has no column {name}</source>
        <translation>der Kopf hat keine Spalte {name}</translation>
    </message>
    <message>
        <source>Begin the file with the line span,from,to,cable,length_km,closures</source>
        <translation>Die Datei mit der Zeile span,from,to,cable,length_km,closures beginnen</translation>
    </message>
    <message>
        <source>span {label} is in the file twice</source>
        <translation>die Strecke {label} steht zweimal in der Datei</translation>
    </message>
    <message>
        <source>where the span goes from is one closure or one named end</source>
        <translation>der Anfang der Strecke ist eine Muffe oder ein benanntes Ende</translation>
    </message>
    <message>
        <source>where the span goes to is one closure or one named end</source>
        <translation>das Ziel der Strecke ist eine Muffe oder ein benanntes Ende</translation>
    </message>
    <message>
        <source>the span ends where it begins</source>
        <translation>die Strecke endet, wo sie beginnt</translation>
    </message>
    <message>
        <source>the length of the span is not between 0 and 20,000 km</source>
        <translation>die Länge der Strecke liegt nicht zwischen 0 und 20.000 km</translation>
    </message>
    <message>
        <source>the span has more than 1,000 closures</source>
        <translation>die Strecke hat mehr als 1.000 Muffen</translation>
    </message>
    <message>
        <source>a closure is on the span twice</source>
        <translation>eine Muffe liegt zweimal auf der Strecke</translation>
    </message>
    <message>
        <source>this is a logbook, not a table</source>
        <translation>das ist ein Bordbuch, keine Tabelle</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Eine andere Datei wählen</translation>
    </message>
    <message>
        <source>the file is too large for such a table</source>
        <translation>die Datei ist für eine solche Tabelle zu groß</translation>
    </message>
    <message>
        <source>the row is not in this logbook</source>
        <translation>die Zeile ist nicht in diesem Bordbuch</translation>
    </message>
    <message>
        <source>Putting the splices in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closure {label}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{closure}, splice of {time} on {splicer}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{tool}, care {~action} of {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{field} must be a whole number between {#least} and {#most}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
