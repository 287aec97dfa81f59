<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Fibre</name>
    <message numerus="yes">
        <source>%1, %n tracer mark(s)</source>
        <translation>
            <numerusform>%1, %n tracer mark</numerusform>
            <numerusform>%1, %n tracer marks</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>arc::ui::Comb</name>
    <message numerus="yes">
        <source>The %n grooves</source>
        <translation>
            <numerusform>The groove</numerusform>
            <numerusform>The %n grooves</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>arc::ui::JobBar</name>
    <message numerus="yes">
        <source>about %n s left</source>
        <translation>
            <numerusform>about %n s left</numerusform>
            <numerusform>about %n s left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n min left</source>
        <translation>
            <numerusform>about %n min left</numerusform>
            <numerusform>about %n min left</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>arc::ui::LossPad</name>
    <message numerus="yes">
        <source>%n noted. Enter saves them, Esc drops them.</source>
        <translation>
            <numerusform>%n noted. Enter saves it, Esc drops it.</numerusform>
            <numerusform>%n noted. Enter saves them, Esc drops them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>arc::ui::TodayPage</name>
    <message numerus="yes">
        <source>%n to re-splice</source>
        <translation>
            <numerusform>%n to re-splice</numerusform>
            <numerusform>%n to re-splice</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>arc::ui::text</name>
    <message numerus="yes">
        <source>%n min ago</source>
        <translation>
            <numerusform>%n min ago</numerusform>
            <numerusform>%n min ago</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n h ago</source>
        <translation>
            <numerusform>%n h ago</numerusform>
            <numerusform>%n h ago</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n days ago</source>
        <translation>
            <numerusform>%n day ago</numerusform>
            <numerusform>%n days ago</numerusform>
        </translation>
    </message>
</context>
</TS>
