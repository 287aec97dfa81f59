<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Fibre</name>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>naranja</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>marrón</translation>
    </message>
    <message>
        <source>slate</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanco</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rojo</translation>
    </message>
    <message>
        <source>black</source>
        <translation>negro</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violeta</translation>
    </message>
    <message>
        <source>rose</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>aqua</source>
        <translation>aguamarina</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>turquesa</translation>
    </message>
    <message>
        <source>natural</source>
        <translation>natural</translation>
    </message>
    <message>
        <source>lime</source>
        <translation>lima</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosado</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n tracer mark(s)</source>
        <translation>
            <numerusform>%1, %n marca</numerusform>
            <numerusform>%1, %n marcas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Finder</name>
    <message>
        <source>splicer</source>
        <translation>empalmadora</translation>
    </message>
    <message>
        <source>cleaver</source>
        <translation>cortadora</translation>
    </message>
    <message>
        <source>stripper</source>
        <translation>peladora</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>Dirt in one groove of 12, +0.02 dB, growing in</source>
        <translation>Suciedad en una de 12 ranuras, +0,02 dB, creciendo</translation>
    </message>
    <message>
        <source>The same, +0.04 dB</source>
        <translation>Lo mismo, +0,04 dB</translation>
    </message>
    <message>
        <source>The same, +0.08 dB</source>
        <translation>Lo mismo, +0,08 dB</translation>
    </message>
    <message>
        <source>Arc calibration off by 0.01 dB, 12 fibres</source>
        <translation>Calibración del arco desviada 0,01 dB, 12 fibras</translation>
    </message>
    <message>
        <source>The same, single fibre</source>
        <translation>Lo mismo, una sola fibra</translation>
    </message>
    <message>
        <source>A cleaver that cuts worse and worse, 12 fibres</source>
        <translation>Una cortadora que corta cada vez peor, 12 fibras</translation>
    </message>
    <message>
        <source>A lot of fibre that splices 0.015 dB worse</source>
        <translation>Un lote de fibra que empalma 0,015 dB peor</translation>
    </message>
    <message>
        <source>Electrodes past their best, 12 fibres</source>
        <translation>Electrodos gastados, 12 fibras</translation>
    </message>
</context>
<context>
    <name>QDialog</name>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Add a tool</source>
        <translation>Añadir una herramienta</translation>
    </message>
    <message>
        <source>The label is what the crew and the files call it. It cannot be given twice.</source>
        <translation>La etiqueta es el nombre que le dan la cuadrilla y los archivos. No se puede repetir.</translation>
    </message>
    <message>
        <source>Kind of tool</source>
        <translation>Tipo de herramienta</translation>
    </message>
    <message>
        <source>Mass splicer</source>
        <translation>Empalmadora de cinta</translation>
    </message>
    <message>
        <source>Single-fibre splicer</source>
        <translation>Empalmadora de fibra única</translation>
    </message>
    <message>
        <source>Cleaver</source>
        <translation>Cortadora</translation>
    </message>
    <message>
        <source>Ribbon stripper</source>
        <translation>Peladora de cinta</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Nickname</source>
        <translation>Apodo</translation>
    </message>
    <message>
        <source>Grooves</source>
        <translation>Ranuras</translation>
    </message>
    <message>
        <source>Arc control</source>
        <translation>Control del arco</translation>
    </message>
    <message>
        <source>calibrated by hand</source>
        <translation>calibrado a mano</translation>
    </message>
    <message>
        <source>adjusts itself at each splice</source>
        <translation>se ajusta en cada empalme</translation>
    </message>
    <message>
        <source>Blade positions</source>
        <translation>Posiciones de la cuchilla</translation>
    </message>
    <message>
        <source>Blade heights</source>
        <translation>Alturas de la cuchilla</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Arc</source>
        <translation>Arco</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>There is a tool of this label in the kit already.</source>
        <translation>Ya hay en el equipo una herramienta con esta etiqueta.</translation>
    </message>
    <message>
        <source>Correct the counter of %1</source>
        <translation>Corregir el contador de %1</translation>
    </message>
    <message>
        <source>What the tool&apos;s own counter shows now. What was written before stays in the book.</source>
        <translation>Lo que muestra ahora el contador propio de la herramienta. Lo anotado antes queda en la bitácora.</translation>
    </message>
    <message>
        <source>Counter shows</source>
        <translation>El contador muestra</translation>
    </message>
    <message>
        <source>why: counter replaced, typed wrong, …</source>
        <translation>por qué: contador reemplazado, mal escrito, …</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Anotarlo</translation>
    </message>
</context>
<context>
    <name>QFileDialog</name>
    <message>
        <source>Folder</source>
        <translation>Carpeta</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation>Imágenes (*.jpg *.jpeg *.png)</translation>
    </message>
</context>
<context>
    <name>Screen</name>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Cuidados</translation>
    </message>
    <message>
        <source>Drift</source>
        <translation>Deriva</translation>
    </message>
    <message>
        <source>Closeout</source>
        <translation>Cierre</translation>
    </message>
    <message>
        <source>Logbook</source>
        <translation>Bitácora</translation>
    </message>
</context>
<context>
    <name>arc::print</name>
    <message>
        <source>Every splice is within the rule; nothing is out of order.</source>
        <translation>Todos los empalmes cumplen la regla; todo está en orden.</translation>
    </message>
    <message>
        <source>1 exception, decided on with name and reason.</source>
        <translation>1 excepción, resuelta con nombre y motivo.</translation>
    </message>
    <message>
        <source>%1 exceptions, all decided on with name and reason.</source>
        <translation>%1 excepciones, todas resueltas con nombre y motivo.</translation>
    </message>
    <message>
        <source>Nothing is spliced yet.</source>
        <translation>Aún no hay nada empalmado.</translation>
    </message>
    <message>
        <source>1 exception waits for a decision.</source>
        <translation>1 excepción espera una resolución.</translation>
    </message>
    <message>
        <source>%1 exceptions wait for a decision.</source>
        <translation>%1 excepciones esperan una resolución.</translation>
    </message>
    <message>
        <source>A splice is above the ceiling, or an exception was rejected.</source>
        <translation>Un empalme está sobre el techo, o se rechazó una excepción.</translation>
    </message>
    <message>
        <source>Draft, not issued</source>
        <translation>Borrador, sin emitir</translation>
    </message>
    <message>
        <source>Record no. %1, issued by %2, supersedes no. %3</source>
        <translation>Acta n.º %1, emitida por %2, sustituye a la n.º %3</translation>
    </message>
    <message>
        <source>Record no. %1, issued by %2</source>
        <translation>Acta n.º %1, emitida por %2</translation>
    </message>
    <message>
        <source>In this record</source>
        <translation>En esta acta</translation>
    </message>
    <message>
        <source>%1 no. %2</source>
        <translation>%1 n.º %2</translation>
    </message>
    <message>
        <source>%1, draft</source>
        <translation>%1, borrador</translation>
    </message>
    <message>
        <source>Closeout record</source>
        <translation>Acta de cierre</translation>
    </message>
    <message>
        <source>Made %1</source>
        <translation>Hecha el %1</translation>
    </message>
    <message>
        <source>Splices</source>
        <translation>Empalmes</translation>
    </message>
    <message>
        <source>%1 of %2 planned are there</source>
        <translation>están %1 de %2 previstos</translation>
    </message>
    <message>
        <source>no splice plan, completeness not known</source>
        <translation>sin plan de empalme, no se sabe si está completa</translation>
    </message>
    <message>
        <source>Right the first time</source>
        <translation>Bien a la primera</translation>
    </message>
    <message>
        <source>%1 %, %2 attempts in all</source>
        <translation>%1 %, %2 intentos en total</translation>
    </message>
    <message>
        <source>Mean estimated loss</source>
        <translation>Pérdida estimada media</translation>
    </message>
    <message>
        <source>limit %1 dB</source>
        <translation>límite %1 dB</translation>
    </message>
    <message>
        <source>Worst estimated loss</source>
        <translation>Peor pérdida estimada</translation>
    </message>
    <message>
        <source>limit %1, ceiling %2 dB</source>
        <translation>límite %1, techo %2 dB</translation>
    </message>
    <message>
        <source>First splice</source>
        <translation>Primer empalme</translation>
    </message>
    <message>
        <source>Last splice</source>
        <translation>Último empalme</translation>
    </message>
    <message>
        <source>Acceptance rule</source>
        <translation>Regla de aceptación</translation>
    </message>
    <message>
        <source>a sample, not a contract&apos;s</source>
        <translation>una muestra, no de un contrato</translation>
    </message>
    <message>
        <source>of the contract</source>
        <translation>del contrato</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Juzgado por</translation>
    </message>
    <message>
        <source>two-way mean</source>
        <translation>media de dos sentidos</translation>
    </message>
    <message>
        <source>splicer&apos;s estimate</source>
        <translation>estimación de la empalmadora</translation>
    </message>
    <message>
        <source>%1 voided readings left out</source>
        <translation>%1 lecturas anuladas no cuentan</translation>
    </message>
    <message>
        <source>Journal head</source>
        <translation>Cabeza del diario</translation>
    </message>
    <message>
        <source>This paper belongs to a folder with the same record as data. manifest.json holds the SHA-256 of each file, manifest.sig the Ed25519 signature of the device that made it. &quot;arcw verify&quot; checks both; so do sha256sum and openssl.</source>
        <translation>Este papel pertenece a una carpeta con la misma acta como datos. manifest.json contiene el SHA-256 de cada archivo; manifest.sig, la firma Ed25519 del equipo que la hizo. «arcw verify» comprueba ambos; también sha256sum y openssl.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Firmas</translation>
    </message>
    <message>
        <source>Signing says: the splices of %1 were made as listed, and the exceptions and their dispositions were read.</source>
        <translation>Firmar dice: los empalmes de %1 se hicieron como constan, y se leyeron las excepciones y sus resoluciones.</translation>
    </message>
    <message>
        <source>Crew: name and signature</source>
        <translation>Cuadrilla: nombre y firma</translation>
    </message>
    <message>
        <source>Quality assurance: name and signature</source>
        <translation>Control de calidad: nombre y firma</translation>
    </message>
    <message>
        <source>Customer: name and signature</source>
        <translation>Cliente: nombre y firma</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>above</source>
        <translation>encima</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>límite %1</translation>
    </message>
    <message>
        <source>estimated loss, dB</source>
        <translation>pérdida estimada, dB</translation>
    </message>
    <message>
        <source>splices</source>
        <translation>empalmes</translation>
    </message>
    <message>
        <source>splices in order of time; triangles are above the limit</source>
        <translation>empalmes por orden de tiempo; los triángulos están sobre el límite</translation>
    </message>
    <message>
        <source>splices in order of time; strokes from lowest to highest, the line is their mean</source>
        <translation>empalmes por orden de tiempo; trazos del menor al mayor, la línea es su media</translation>
    </message>
    <message>
        <source>Cleaver</source>
        <translation>Cortadora</translation>
    </message>
    <message>
        <source>Stripper</source>
        <translation>Peladora</translation>
    </message>
    <message>
        <source>Mass splicer</source>
        <translation>Empalmadora de cinta</translation>
    </message>
    <message>
        <source>Single-fibre splicer</source>
        <translation>Empalmadora de una fibra</translation>
    </message>
    <message>
        <source>No care of this tool is recorded.</source>
        <translation>No consta ningún cuidado de esta herramienta.</translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Cuidado</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>before the job</source>
        <translation>antes de la obra</translation>
    </message>
    <message>
        <source>during the job</source>
        <translation>durante la obra</translation>
    </message>
    <message>
        <source>%1 earlier ones</source>
        <translation>%1 anteriores</translation>
    </message>
    <message>
        <source>listed in record.json and record.xlsx</source>
        <translation>constan en record.json y record.xlsx</translation>
    </message>
    <message>
        <source>%1 + tracer</source>
        <translation>%1 + marca</translation>
    </message>
    <message>
        <source>%1: measured losses, dB</source>
        <translation>%1: pérdidas medidas, dB</translation>
    </message>
    <message>
        <source>Fibre</source>
        <translation>Fibra</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>A to B</source>
        <translation>De A a B</translation>
    </message>
    <message>
        <source>B to A</source>
        <translation>De B a A</translation>
    </message>
    <message>
        <source>Two-way mean</source>
        <translation>Media 2 sentidos</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>one-way only</source>
        <translation>solo un sentido</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation>Resumen</translation>
    </message>
    <message>
        <source>Closure</source>
        <translation>Caja</translation>
    </message>
    <message>
        <source>Cables</source>
        <translation>Cables</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Previstos</translation>
    </message>
    <message>
        <source>Spliced</source>
        <translation>Hechos</translation>
    </message>
    <message>
        <source>Re-spliced</source>
        <translation>Rehechos</translation>
    </message>
    <message>
        <source>Mean, dB</source>
        <translation>Media, dB</translation>
    </message>
    <message>
        <source>Worst, dB</source>
        <translation>Peor, dB</translation>
    </message>
    <message>
        <source>%1 over</source>
        <translation>%1 sobre límite</translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation>faltan %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>Losses: mean %1, median %2, standard deviation %3 dB</source>
        <translation>Pérdidas: media %1, mediana %2, desviación típica %3 dB</translation>
    </message>
    <message>
        <source>Losses in the order they were made</source>
        <translation>Pérdidas en el orden en que se hicieron</translation>
    </message>
    <message>
        <source>Exceptions</source>
        <translation>Excepciones</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Ninguna.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Disposition</source>
        <translation>Resolución</translation>
    </message>
    <message>
        <source>open</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>Tools and their care</source>
        <translation>Herramientas y cuidados</translation>
    </message>
    <message>
        <source>%1, %2 attempts here, %3 to %4</source>
        <translation>%1, %2 intentos aquí, %3 a %4</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>no consta</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>Arcs at last use since electrodes: %1, since V-groove clean: %2, since arc calibration: %3</source>
        <translation>Arcos hasta el último uso: desde los electrodos %1, desde la limpieza de ranuras en V %2, desde la calibración del arco %3</translation>
    </message>
    <message>
        <source>Calibration owed from %1 to %2: %3</source>
        <translation>Calibración pendiente de %1 a %2: %3</translation>
    </message>
    <message>
        <source>the end</source>
        <translation>el final</translation>
    </message>
    <message>
        <source>Link budget</source>
        <translation>Presupuesto del enlace</translation>
    </message>
    <message>
        <source>Wavelength, nm</source>
        <translation>Longitud de onda, nm</translation>
    </message>
    <message>
        <source>Fibre, dB</source>
        <translation>Fibra, dB</translation>
    </message>
    <message>
        <source>Splices, dB</source>
        <translation>Empalmes, dB</translation>
    </message>
    <message>
        <source>Connectors, dB</source>
        <translation>Conectores, dB</translation>
    </message>
    <message>
        <source>Total, dB</source>
        <translation>Total, dB</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>permitido</translation>
    </message>
    <message>
        <source>as spliced</source>
        <translation>empalmado</translation>
    </message>
    <message>
        <source>%1 km of fibre, splices: %2, connectors: %3.</source>
        <translation>%1 km de fibra, empalmes: %2, conectores: %3.</translation>
    </message>
    <message>
        <source>Every splice</source>
        <translation>Cada empalme</translation>
    </message>
    <message>
        <source>Fibre A</source>
        <translation>Fibra A</translation>
    </message>
    <message>
        <source>Fibre B</source>
        <translation>Fibra B</translation>
    </message>
    <message>
        <source>Loss, dB</source>
        <translation>Pérd., dB</translation>
    </message>
    <message>
        <source>Tries</source>
        <translation>Int.</translation>
    </message>
    <message>
        <source>Splicer</source>
        <translation>Empalm.</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Closeout record %1</source>
        <translation>Acta de cierre %1</translation>
    </message>
    <message>
        <source>Journal head %1</source>
        <translation>Cabeza del diario %1</translation>
    </message>
    <message>
        <source>DRAFT</source>
        <translation>BORRADOR</translation>
    </message>
    <message>
        <source>At %1 nm, splices measured in both directions: %2, estimated: %3.</source>
        <translation>A %1 nm, empalmes medidos en ambos sentidos: %2, estimados: %3.</translation>
    </message>
    <message>
        <source>Span %1, %2 to %3</source>
        <translation>Tramo %1, de %2 a %3</translation>
    </message>
    <message>
        <source>%1. Splices: %2.</source>
        <translation>%1. Empalmes: %2.</translation>
    </message>
    <message>
        <source>Average %1 dB, agreed %2 dB.</source>
        <translation>Media %1 dB, acordada %2 dB.</translation>
    </message>
    <message>
        <source>Photos and notes</source>
        <translation>Fotos y notas</translation>
    </message>
    <message>
        <source>File beside this paper</source>
        <translation>Archivo junto a este papel</translation>
    </message>
    <message>
        <source>Belongs to</source>
        <translation>Pertenece a</translation>
    </message>
    <message>
        <source>Bytes</source>
        <translation>Bytes</translation>
    </message>
    <message>
        <source>SHA-256 begins</source>
        <translation>SHA-256 empieza por</translation>
    </message>
</context>
<context>
    <name>arc::print::Sheet</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
</context>
<context>
    <name>arc::print::Table</name>
    <message>
        <source>%1, continued</source>
        <translation>%1, continuación</translation>
    </message>
</context>
<context>
    <name>arc::ui</name>
    <message>
        <source>%1 of the limit</source>
        <translation>%1 del límite</translation>
    </message>
    <message>
        <source>cleave angles, worst end of an arc</source>
        <translation>ángulos de corte, peor extremo de un arco</translation>
    </message>
    <message>
        <source>losses, mean of an arc</source>
        <translation>pérdidas, media de un arco</translation>
    </message>
    <message>
        <source>losses</source>
        <translation>pérdidas</translation>
    </message>
    <message>
        <source>%1 dB lately</source>
        <translation>%1 dB últimamente</translation>
    </message>
    <message>
        <source>, baseline %1</source>
        <translation>, línea base %1</translation>
    </message>
    <message>
        <source>all grooves together</source>
        <translation>todas las ranuras juntas</translation>
    </message>
    <message>
        <source>level of the losses</source>
        <translation>nivel de las pérdidas</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>cleave angles, summed up</source>
        <translation>ángulos de corte, sumados</translation>
    </message>
    <message>
        <source>groove or clamp</source>
        <translation>ranura o mordaza</translation>
    </message>
    <message>
        <source>electrodes</source>
        <translation>electrodos</translation>
    </message>
    <message>
        <source>calibration</source>
        <translation>calibración</translation>
    </message>
    <message>
        <source>cleaver</source>
        <translation>cortadora</translation>
    </message>
    <message>
        <source>fibre lot</source>
        <translation>lote de fibra</translation>
    </message>
    <message>
        <source>not clear</source>
        <translation>no está claro</translation>
    </message>
    <message>
        <source>groove %1 alone</source>
        <translation>ranura %1 sola</translation>
    </message>
    <message>
        <source>each groove alone</source>
        <translation>cada ranura por separado</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>dispersión</translation>
    </message>
    <message>
        <source>cleave angles</source>
        <translation>ángulos de corte</translation>
    </message>
    <message>
        <source>re-splice rate</source>
        <translation>tasa de reempalmes</translation>
    </message>
    <message>
        <source>one splice alone</source>
        <translation>un empalme aislado</translation>
    </message>
    <message>
        <source>estimate against measurement</source>
        <translation>estimación frente a medida</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>care done, watching</source>
        <translation>cuidado hecho, en observación</translation>
    </message>
    <message>
        <source>recovered</source>
        <translation>recuperada</translation>
    </message>
    <message>
        <source>dismissed</source>
        <translation>descartada</translation>
    </message>
    <message>
        <source>it helped: recovered</source>
        <translation>ayudó: recuperada</translation>
    </message>
    <message>
        <source>it helped in part</source>
        <translation>ayudó en parte</translation>
    </message>
    <message>
        <source>no change</source>
        <translation>sin cambio</translation>
    </message>
    <message>
        <source>worse since</source>
        <translation>peor desde entonces</translation>
    </message>
    <message>
        <source>too early to say</source>
        <translation>demasiado pronto para saberlo</translation>
    </message>
    <message>
        <source>1 arc</source>
        <translation>1 arco</translation>
    </message>
    <message>
        <source>%1 arcs</source>
        <translation>%1 arcos</translation>
    </message>
    <message>
        <source>arc %1 (%2–%3)</source>
        <translation>arco %1 (%2–%3)</translation>
    </message>
    <message>
        <source>single-fibre splicer</source>
        <translation>empalmadora de fibra única</translation>
    </message>
    <message>
        <source>mass splicer, %1 grooves</source>
        <translation>empalmadora de cinta, %1 ranuras</translation>
    </message>
    <message>
        <source>ribbon stripper</source>
        <translation>peladora de cinta</translation>
    </message>
    <message>
        <source>%1 of about %2 %3</source>
        <translation>%1 de aprox. %2 %3</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>≥ %1</translation>
    </message>
    <message>
        <source>, due</source>
        <translation>, ya</translation>
    </message>
    <message>
        <source>none in the book</source>
        <translation>ninguna en la bitácora</translation>
    </message>
    <message>
        <source>done %1, results not written down</source>
        <translation>hecha %1, sin resultados anotados</translation>
    </message>
    <message>
        <source>done, results not written down</source>
        <translation>hecha, sin resultados anotados</translation>
    </message>
    <message>
        <source>owed: %1</source>
        <translation>pendiente: %1</translation>
    </message>
    <message>
        <source>owed</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>height %1 of %2, position %3 of %4</source>
        <translation>altura %1 de %2, posición %3 de %4</translation>
    </message>
    <message>
        <source>%1; last height, have a blade ready</source>
        <translation>%1; última altura, tenga lista una cuchilla</translation>
    </message>
    <message>
        <source>%1; used up, a new blade is due</source>
        <translation>%1; agotada, toca una cuchilla nueva</translation>
    </message>
    <message>
        <source>steady</source>
        <translation>estable</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>vigilar</translation>
    </message>
    <message>
        <source>drifting</source>
        <translation>en deriva</translation>
    </message>
    <message>
        <source>learning</source>
        <translation>aprendiendo</translation>
    </message>
    <message>
        <source>groove clean</source>
        <translation>limpieza de ranuras</translation>
    </message>
    <message>
        <source>clamp clean</source>
        <translation>limpieza de mordazas</translation>
    </message>
    <message>
        <source>lens clean</source>
        <translation>limpieza de lentes</translation>
    </message>
    <message>
        <source>stabilised</source>
        <translation>estabilizados</translation>
    </message>
    <message>
        <source>diagnostics</source>
        <translation>diagnóstico</translation>
    </message>
    <message>
        <source>cleaver clean</source>
        <translation>limpieza de cortadora</translation>
    </message>
    <message>
        <source>blade clean</source>
        <translation>limpieza de cuchilla</translation>
    </message>
    <message>
        <source>blade turned</source>
        <translation>cuchilla girada</translation>
    </message>
    <message>
        <source>blade raised</source>
        <translation>cuchilla subida</translation>
    </message>
    <message>
        <source>stripper clean</source>
        <translation>limpieza de peladora</translation>
    </message>
    <message>
        <source>moved or weather</source>
        <translation>traslado o tiempo</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>Raise the blade to its next height</source>
        <translation>Subir la cuchilla a la altura siguiente</translation>
    </message>
    <message>
        <source>Stabilise electrodes</source>
        <translation>Estabilizar los electrodos</translation>
    </message>
    <message>
        <source>helped</source>
        <translation>ayudó</translation>
    </message>
    <message>
        <source>helped in part</source>
        <translation>ayudó en parte</translation>
    </message>
    <message>
        <source>too early to tell</source>
        <translation>demasiado pronto para saberlo</translation>
    </message>
    <message>
        <source> for %1 fibres of %2</source>
        <translation> para %1 fibras de %2</translation>
    </message>
    <message>
        <source>adjusts itself; calibrated%1 %2</source>
        <translation>se ajusta sola; calibrada%1 %2</translation>
    </message>
    <message>
        <source>valid%1, %2</source>
        <translation>válida%1, %2</translation>
    </message>
</context>
<context>
    <name>arc::ui::ActionWords</name>
    <message>
        <source>&quot;%1&quot; means</source>
        <translation>«%1» significa</translation>
    </message>
    <message>
        <source>not said: its rows are set aside</source>
        <translation>sin decir: sus filas se apartan</translation>
    </message>
</context>
<context>
    <name>arc::ui::AttachmentSheet</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Close  Esc</source>
        <translation>Cerrar  Esc</translation>
    </message>
    <message>
        <source>%1 KB</source>
        <translation>%1 KB</translation>
    </message>
    <message>
        <source>%1 MB</source>
        <translation>%1 MB</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Nota: %1</translation>
    </message>
    <message>
        <source>Photos and notes</source>
        <translation>Fotos y notas</translation>
    </message>
    <message>
        <source>Attached to</source>
        <translation>Adjunto a</translation>
    </message>
    <message>
        <source>Nothing is attached yet. P adds a photo, N writes a note.</source>
        <translation>Aún no hay nada adjunto. P añade una foto, N escribe una nota.</translation>
    </message>
    <message>
        <source>The note</source>
        <translation>La nota</translation>
    </message>
    <message>
        <source>New note</source>
        <translation>Nota nueva</translation>
    </message>
    <message>
        <source>Write; Ctrl+Enter saves it</source>
        <translation>Escriba; Ctrl+Intro la guarda</translation>
    </message>
    <message>
        <source>Add photo  P</source>
        <translation>Añadir foto  P</translation>
    </message>
    <message>
        <source>Write note  N</source>
        <translation>Escribir nota  N</translation>
    </message>
    <message>
        <source>Save out  S</source>
        <translation>Guardar fuera  S</translation>
    </message>
    <message>
        <source>Take back  Del</source>
        <translation>Deshacer  Supr</translation>
    </message>
    <message>
        <source>This picture cannot be shown here. S saves it out as it is.</source>
        <translation>Esta imagen no se puede mostrar aquí. S la guarda fuera tal como es.</translation>
    </message>
    <message>
        <source>Picture %1, %2 by %3 pixels</source>
        <translation>Imagen %1, %2 por %3 píxeles</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>Guardado.</translation>
    </message>
    <message>
        <source>Save out into</source>
        <translation>Guardar fuera en</translation>
    </message>
    <message>
        <source>Saved out as %1</source>
        <translation>Guardado fuera como %1</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
    <message>
        <source>Taken back. Undo brings it again.</source>
        <translation>Deshecho. Deshacer lo trae de nuevo.</translation>
    </message>
</context>
<context>
    <name>arc::ui::BackupsPanel</name>
    <message>
        <source>Make a copy now</source>
        <translation>Hacer una copia ahora</translation>
    </message>
    <message>
        <source>Make a logbook of the chosen copy…</source>
        <translation>Hacer una bitácora de la copia elegida…</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Copias</translation>
    </message>
    <message>
        <source>every hours</source>
        <translation>cada tantas horas</translation>
    </message>
    <message>
        <source>copies at most</source>
        <translation>copias como máximo</translation>
    </message>
    <message>
        <source>days at most</source>
        <translation>días como máximo</translation>
    </message>
    <message>
        <source>megabytes at most</source>
        <translation>megabytes como máximo</translation>
    </message>
    <message>
        <source>%1   %2   %3</source>
        <translation>%1   %2   %3</translation>
    </message>
    <message>
        <source>There is no copy yet. One is made by itself after the first entries; it can be made while you work.</source>
        <translation>Aún no hay copia. Se hace sola tras las primeras entradas; puede hacerse mientras trabaja.</translation>
    </message>
    <message>
        <source>Copies are made by themselves while you work, in %1. Put one of them on a stick from time to time: a copy on the same disk does not help when the disk fails.</source>
        <translation>Las copias se hacen solas mientras trabaja, en %1. Ponga una de vez en cuando en una memoria USB: una copia en el mismo disco no ayuda cuando el disco falla.</translation>
    </message>
    <message>
        <source>Copying…</source>
        <translation>Copiando…</translation>
    </message>
    <message>
        <source>Copying the logbook</source>
        <translation>Copiando la bitácora</translation>
    </message>
    <message>
        <source>Copied: %1</source>
        <translation>Copiada: %1</translation>
    </message>
    <message>
        <source>Folder for the new logbook</source>
        <translation>Carpeta para la bitácora nueva</translation>
    </message>
    <message>
        <source>Checking the copy…</source>
        <translation>Revisando la copia…</translation>
    </message>
    <message>
        <source>Making a logbook of a copy</source>
        <translation>Haciendo una bitácora de una copia</translation>
    </message>
    <message>
        <source>The copy is sound; the new logbook is %1. Open it with arcwright. This one stays as it is.</source>
        <translation>La copia está sana; la bitácora nueva es %1. Ábrala con arcwright. Esta queda como está.</translation>
    </message>
</context>
<context>
    <name>arc::ui::BaselineBar</name>
    <message>
        <source>Baseline from arc</source>
        <translation>Línea base desde el arco</translation>
    </message>
    <message>
        <source>Baseline to arc</source>
        <translation>Línea base hasta el arco</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Anotarlo</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>why, for the journal</source>
        <translation>por qué, para el diario</translation>
    </message>
    <message>
        <source>Reason for moving the baseline</source>
        <translation>Motivo para mover la línea base</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
</context>
<context>
    <name>arc::ui::BladeGrid</name>
    <message>
        <source>Blade</source>
        <translation>Cuchilla</translation>
    </message>
    <message>
        <source>height %1 of %2, position %3 of %4</source>
        <translation>altura %1 de %2, posición %3 de %4</translation>
    </message>
    <message>
        <source>height %1, position %2: %3 cleaves</source>
        <translation>altura %1, posición %2: %3 cortes</translation>
    </message>
    <message>
        <source>, in use now</source>
        <translation>, en uso ahora</translation>
    </message>
</context>
<context>
    <name>arc::ui::BookBar</name>
    <message>
        <source>State of the logbook</source>
        <translation>Estado de la bitácora</translation>
    </message>
    <message>
        <source>What is readable, and rescue</source>
        <translation>Qué se puede leer, y rescate</translation>
    </message>
</context>
<context>
    <name>arc::ui::CardEditor</name>
    <message>
        <source>Edit the card: %1</source>
        <translation>Editar la ficha: %1</translation>
    </message>
    <message>
        <source>Version %1 is in force. What you adopt is checked first; old records keep the version they were done with.</source>
        <translation>Rige la versión %1. Lo que adopte se revisa antes; los registros viejos conservan la versión con que se hicieron.</translation>
    </message>
    <message>
        <source>Text of the card</source>
        <translation>Texto de la ficha</translation>
    </message>
    <message>
        <source>Check and adopt  Ctrl+Enter</source>
        <translation>Revisar y adoptar  Ctrl+Intro</translation>
    </message>
    <message>
        <source>Leave it as it is  Esc</source>
        <translation>Dejarla como está  Esc</translation>
    </message>
</context>
<context>
    <name>arc::ui::CardRunner</name>
    <message>
        <source>Back  B</source>
        <translation>Atrás  B</translation>
    </message>
    <message>
        <source>Pause  Esc</source>
        <translation>Pausa  Esc</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Abandonar</translation>
    </message>
    <message>
        <source>Steps done</source>
        <translation>Pasos hechos</translation>
    </message>
    <message>
        <source>About %1 minutes. Read this first.</source>
        <translation>Unos %1 minutos. Lea esto primero.</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Lo he leído</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Have these at hand</source>
        <translation>Tenga esto a mano</translation>
    </message>
    <message>
        <source>All at hand</source>
        <translation>Todo a mano</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Paso %1 de %2</translation>
    </message>
    <message>
        <source> · round %1 of at most %2</source>
        <translation> · vuelta %1 de %2 como máximo</translation>
    </message>
    <message>
        <source>its first end</source>
        <translation>su primer extremo</translation>
    </message>
    <message>
        <source>its other end</source>
        <translation>su otro extremo</translation>
    </message>
    <message>
        <source>Swab %1, %2. A used end is never used again.</source>
        <translation>Hisopo %1, %2. Un extremo usado no se vuelve a usar.</translation>
    </message>
    <message>
        <source>Yes, good</source>
        <translation>Sí, bien</translation>
    </message>
    <message>
        <source>Y</source>
        <translation>Y</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Aún no</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Anotarlo</translation>
    </message>
    <message>
        <source>Time gone by</source>
        <translation>Tiempo transcurrido</translation>
    </message>
    <message>
        <source>Start %1 minutes</source>
        <translation>Iniciar %1 minutos</translation>
    </message>
    <message>
        <source>Time is over, go on</source>
        <translation>Se acabó el tiempo, siga</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>time is over</source>
        <translation>se acabó el tiempo</translation>
    </message>
    <message>
        <source>All steps are through</source>
        <translation>Todos los pasos están hechos</translation>
    </message>
    <message>
        <source>Tried, not reached. What comes next stays in the queue.</source>
        <translation>Intentado, no logrado. Lo siguiente queda en la cola.</translation>
    </message>
    <message>
        <source>Reached what it was for.</source>
        <translation>Se logró lo que se buscaba.</translation>
    </message>
    <message>
        <source>Now compulsory: %1. It is in the queue.</source>
        <translation>Ahora es obligatorio: %1. Está en la cola.</translation>
    </message>
    <message>
        <source>Write the record</source>
        <translation>Escribir el registro</translation>
    </message>
    <message>
        <source>Swab ends used</source>
        <translation>Extremos de hisopo usados</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rondas</translation>
    </message>
    <message>
        <source>Done on the way</source>
        <translation>Hecho de paso</translation>
    </message>
    <message>
        <source>Gentler care not tried first</source>
        <translation>Cuidado más suave no probado antes</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Porque</translation>
    </message>
</context>
<context>
    <name>arc::ui::CareDesk</name>
    <message>
        <source>Looking at what is due</source>
        <translation>Mirando lo que toca</translation>
    </message>
</context>
<context>
    <name>arc::ui::CarePage</name>
    <message>
        <source>Care</source>
        <translation>Cuidados</translation>
    </message>
    <message>
        <source>Looking at the tools…</source>
        <translation>Mirando las herramientas…</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>No toca nada</translation>
    </message>
    <message>
        <source>Change the limits of care</source>
        <translation>Cambiar los límites de cuidado</translation>
    </message>
    <message>
        <source>Put aside, the shipped one is used: %1</source>
        <translation>Apartado, se usa lo de fábrica: %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>arc::ui::CauseBars</name>
    <message>
        <source>Likely causes</source>
        <translation>Causas probables</translation>
    </message>
</context>
<context>
    <name>arc::ui::ChartColumn</name>
    <message>
        <source>Charts</source>
        <translation>Gráficos</translation>
    </message>
    <message>
        <source>Read-out</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>arc %1</source>
        <translation>arco %1</translation>
    </message>
    <message>
        <source>mean %1, highest %2 dB</source>
        <translation>media %1, máxima %2 dB</translation>
    </message>
    <message>
        <source>level %1 of the limit</source>
        <translation>nivel %1 del límite</translation>
    </message>
    <message>
        <source>groove %1 fullest, %2</source>
        <translation>ranura %1 la más llena, %2</translation>
    </message>
    <message>
        <source>arcs %1 to %2 of %3 · arrows move, + and − zoom, 0 shows all</source>
        <translation>arcos %1 a %2 de %3 · las flechas mueven, + y − acercan y alejan, 0 muestra todo</translation>
    </message>
    <message>
        <source>calibration owed</source>
        <translation>calibración pendiente</translation>
    </message>
</context>
<context>
    <name>arc::ui::ChartMarks</name>
    <message>
        <source>arc</source>
        <translation>arco</translation>
    </message>
    <message>
        <source>began</source>
        <translation>empezó</translation>
    </message>
    <message>
        <source>signal</source>
        <translation>señal</translation>
    </message>
    <message>
        <source>calibration owed</source>
        <translation>calibración pendiente</translation>
    </message>
</context>
<context>
    <name>arc::ui::ChartView</name>
    <message>
        <source>baseline</source>
        <translation>línea base</translation>
    </message>
</context>
<context>
    <name>arc::ui::CloseoutPage</name>
    <message>
        <source>Closeout</source>
        <translation>Cierre</translation>
    </message>
    <message>
        <source>No job yet</source>
        <translation>Aún no hay obra</translation>
    </message>
    <message>
        <source>A job that was spliced is closed out here: what is complete, what is out of order and who decided about it, and the record a stranger can verify.</source>
        <translation>Aquí se cierra una obra empalmada: qué está completo, qué está fuera de orden y quién lo resolvió, y el acta que un extraño puede verificar.</translation>
    </message>
    <message>
        <source>Make a job on Today</source>
        <translation>Crear una obra en Hoy</translation>
    </message>
    <message>
        <source>What is complete, what is out of order, and the record for the client</source>
        <translation>Qué está completo, qué está fuera de orden, y el acta para el cliente</translation>
    </message>
    <message>
        <source>looking…</source>
        <translation>mirando…</translation>
    </message>
    <message>
        <source>Final record no. %1 was issued on %2 by %3; a later one supersedes it</source>
        <translation>El acta final n.º %1 se emitió el %2 por %3; una posterior la sustituye</translation>
    </message>
    <message>
        <source>Record no. %1 was issued twice, on two laptops. Issue the record again: it gets no. %2 and supersedes both.</source>
        <translation>El acta n.º %1 se emitió dos veces, en dos portátiles. Emita el acta de nuevo: recibe el n.º %2 y sustituye a ambas.</translation>
    </message>
</context>
<context>
    <name>arc::ui::ColumnKeySheet</name>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>punto y coma</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulador</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>barra |</translation>
    </message>
    <message>
        <source>point, 0.03</source>
        <translation>punto, 0.03</translation>
    </message>
    <message>
        <source>comma, 0,03</source>
        <translation>coma, 0,03</translation>
    </message>
    <message>
        <source>ISO, 2031-04-03</source>
        <translation>ISO, 2031-04-03</translation>
    </message>
    <message>
        <source>day first, 03.04.2031</source>
        <translation>primero el día, 03.04.2031</translation>
    </message>
    <message>
        <source>month first, 04/03/2031</source>
        <translation>primero el mes, 04/03/2031</translation>
    </message>
    <message>
        <source>year first, 2031/4/3</source>
        <translation>primero el año, 2031/4/3</translation>
    </message>
    <message>
        <source>day or month first?</source>
        <translation>¿primero día o mes?</translation>
    </message>
    <message>
        <source>dB</source>
        <translation>dB</translation>
    </message>
    <message>
        <source>mdB, thousandths</source>
        <translation>mdB, milésimas</translation>
    </message>
    <message>
        <source>dB or mdB?</source>
        <translation>¿dB o mdB?</translation>
    </message>
    <message>
        <source>like +01:00</source>
        <translation>como +01:00</translation>
    </message>
    <message>
        <source>none; or names with commas</source>
        <translation>ninguna; o nombres con comas</translation>
    </message>
    <message>
        <source>Saved key</source>
        <translation>Clave guardada</translation>
    </message>
    <message>
        <source>Columns are separated by</source>
        <translation>Las columnas se separan con</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Signo decimal</translation>
    </message>
    <message>
        <source>Dates are written</source>
        <translation>Las fechas se escriben</translation>
    </message>
    <message>
        <source>Offset of times without one</source>
        <translation>Desfase de las horas sin él</translation>
    </message>
    <message>
        <source>Losses are in</source>
        <translation>Las pérdidas están en</translation>
    </message>
    <message>
        <source>Time of day, if apart</source>
        <translation>Hora del día, si va aparte</translation>
    </message>
    <message>
        <source>Losses, a column a groove</source>
        <translation>Pérdidas, una columna por ranura</translation>
    </message>
    <message>
        <source>First rows as they would be read</source>
        <translation>Primeras filas tal como se leerían</translation>
    </message>
    <message>
        <source>Save the key as</source>
        <translation>Guardar la clave como</translation>
    </message>
    <message>
        <source>a name, to use it again</source>
        <translation>un nombre, para usarla de nuevo</translation>
    </message>
    <message>
        <source>Import with this key  Ctrl+Enter</source>
        <translation>Importar con esta clave  Ctrl+Intro</translation>
    </message>
    <message>
        <source>Key as a file…</source>
        <translation>Clave como archivo…</translation>
    </message>
    <message>
        <source>Back  Esc</source>
        <translation>Atrás  Esc</translation>
    </message>
    <message>
        <source>choose, or = the same everywhere</source>
        <translation>elija, o = igual en todas</translation>
    </message>
    <message>
        <source>not in the file</source>
        <translation>no está en el archivo</translation>
    </message>
    <message>
        <source>none, go by names</source>
        <translation>ninguna, por nombres</translation>
    </message>
    <message>
        <source>in the same column</source>
        <translation>en la misma columna</translation>
    </message>
    <message>
        <source>%1: the saved key &quot;%2&quot; fits; look at the rows and press Enter</source>
        <translation>%1: encaja la clave guardada &quot;%2&quot;; mire las filas y pulse Intro</translation>
    </message>
    <message>
        <source>%1: which of its columns holds what? Matched by their names, so look it over.</source>
        <translation>%1: ¿qué contiene cada columna? Emparejadas por su nombre: revíselo.</translation>
    </message>
    <message>
        <source>The dates can be read in two ways: say whether the day or the month stands first.</source>
        <translation>Las fechas se pueden leer de dos maneras: diga si va primero el día o el mes.</translation>
    </message>
    <message>
        <source>The times do not say how far they are from UTC: give the offset of the place.</source>
        <translation>Las horas no dicen cuánto distan de UTC: indique el desfase del lugar.</translation>
    </message>
    <message>
        <source>The losses are large whole numbers: say whether they are dB or thousandths.</source>
        <translation>Las pérdidas son números enteros grandes: diga si son dB o milésimas.</translation>
    </message>
    <message>
        <source>%1 of the first %2 rows land</source>
        <translation>entran %1 de las primeras %2 filas</translation>
    </message>
    <message>
        <source>The file has no column &quot;%1&quot;; write &quot;= %1&quot; if every row is to say so.</source>
        <translation>El archivo no tiene la columna &quot;%1&quot;; escriba &quot;= %1&quot; si todas las filas han de decirlo.</translation>
    </message>
    <message>
        <source>The offset &quot;%1&quot; is not like +01:00 or Z.</source>
        <translation>El desfase &quot;%1&quot; no es como +01:00 o Z.</translation>
    </message>
    <message>
        <source>Nothing is taken in before it is said whether day or month stands first.</source>
        <translation>No se importa nada antes de decir si va primero el día o el mes.</translation>
    </message>
    <message>
        <source>Nothing is taken in before the offset from UTC is said, like +01:00.</source>
        <translation>No se importa nada antes de decir el desfase de UTC, como +01:00.</translation>
    </message>
    <message>
        <source>Nothing is taken in before it is said whether losses are dB or mdB.</source>
        <translation>No se importa nada antes de decir si las pérdidas son dB o mdB.</translation>
    </message>
    <message>
        <source>Folder for the key</source>
        <translation>Carpeta para la clave</translation>
    </message>
    <message>
        <source>The key is in %1</source>
        <translation>La clave está en %1</translation>
    </message>
</context>
<context>
    <name>arc::ui::Comb</name>
    <message>
        <source>The groove</source>
        <translation>La ranura</translation>
    </message>
    <message numerus="yes">
        <source>The %n grooves</source>
        <translation>
            <numerusform>La ranura</numerusform>
            <numerusform>Las %n ranuras</numerusform>
        </translation>
    </message>
    <message>
        <source>no groove stands out</source>
        <translation>ninguna ranura destaca</translation>
    </message>
    <message>
        <source>groove %1: no readings yet</source>
        <translation>ranura %1: aún sin lecturas</translation>
    </message>
    <message>
        <source>groove %1, %2: %3 dB in the baseline, %4 dB now (n = %5), alone %6 dB</source>
        <translation>ranura %1, %2: %3 dB en la línea base, %4 dB ahora (n = %5), por separado %6 dB</translation>
    </message>
</context>
<context>
    <name>arc::ui::ConditionPanel</name>
    <message>
        <source>open for writing</source>
        <translation>abierta para escribir</translation>
    </message>
    <message>
        <source>open for reading only</source>
        <translation>abierta solo para leer</translation>
    </message>
    <message>
        <source>damaged, open for reading only</source>
        <translation>dañada, abierta solo para leer</translation>
    </message>
    <message>
        <source>What is readable</source>
        <translation>Qué se puede leer</translation>
    </message>
    <message>
        <source>Check the whole logbook</source>
        <translation>Revisar toda la bitácora</translation>
    </message>
    <message>
        <source>Rescue what is readable into a new logbook…</source>
        <translation>Rescatar lo legible en una bitácora nueva…</translation>
    </message>
    <message>
        <source>A check walks through every page of the file, and through the journal with its hashes; it may take a while and can be stopped.</source>
        <translation>La revisión recorre cada página del archivo y el diario con sus huellas; puede tardar y se puede parar.</translation>
    </message>
    <message>
        <source>Checking…</source>
        <translation>Revisando…</translation>
    </message>
    <message>
        <source>Checking the logbook</source>
        <translation>Revisando la bitácora</translation>
    </message>
    <message>
        <source>Damage was found. Nothing more is written into this logbook.</source>
        <translation>Se hallaron daños. Ya no se escribe nada en esta bitácora.</translation>
    </message>
    <message>
        <source>Every page is whole.</source>
        <translation>Cada página está entera.</translation>
    </message>
    <message>
        <source>Folder for the rescued logbook</source>
        <translation>Carpeta para la bitácora rescatada</translation>
    </message>
    <message>
        <source>Rescuing…</source>
        <translation>Rescatando…</translation>
    </message>
    <message>
        <source>Rescuing the logbook</source>
        <translation>Rescatando la bitácora</translation>
    </message>
    <message>
        <source>Rescued into %1: %2 entries as they were, %3 in part, %4 lost. Open it with arcwright; the damaged one was not touched.</source>
        <translation>Rescatado en %1: %2 entradas tal como eran, %3 en parte, %4 perdidas. Ábrala con arcwright; la dañada no se tocó.</translation>
    </message>
    <message>
        <source>Not whole:</source>
        <translation>No enteras:</translation>
    </message>
</context>
<context>
    <name>arc::ui::DevicesPanel</name>
    <message>
        <source>this laptop</source>
        <translation>este portátil</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
    </message>
    <message>
        <source>not accepted</source>
        <translation>no aceptada</translation>
    </message>
    <message>
        <source>Each laptop signs with a key of its own. Who takes in its satchels compares the key by phone once and gives the laptop a name.</source>
        <translation>Cada portátil firma con una clave propia. Quien toma sus valijas compara la clave una vez por teléfono y da un nombre al portátil.</translation>
    </message>
    <message>
        <source>The key of this laptop</source>
        <translation>La clave de este portátil</translation>
    </message>
    <message>
        <source>Laptops</source>
        <translation>Portátiles</translation>
    </message>
    <message>
        <source>Accept or rename  N</source>
        <translation>Aceptar o cambiar el nombre  N</translation>
    </message>
    <message>
        <source>Accept the chosen laptop, or rename it</source>
        <translation>Aceptar el portátil elegido, o cambiarle el nombre</translation>
    </message>
    <message>
        <source>This laptop needs no name here.</source>
        <translation>Este portátil no necesita nombre aquí.</translation>
    </message>
    <message>
        <source>Name of the laptop with the key %1</source>
        <translation>Nombre del portátil con la clave %1</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Give the name</source>
        <translation>Dar el nombre</translation>
    </message>
    <message>
        <source>Satchels of %1 are taken in from now on.</source>
        <translation>Desde ahora se toman las valijas de %1.</translation>
    </message>
</context>
<context>
    <name>arc::ui::DoneAside</name>
    <message>
        <source>Lately done, and whether it helped</source>
        <translation>Hecho últimamente, y si ayudó</translation>
    </message>
</context>
<context>
    <name>arc::ui::DriftPage</name>
    <message>
        <source>No losses to look at yet</source>
        <translation>Aún no hay pérdidas que mirar</translation>
    </message>
    <message>
        <source>Enter splices on Today, or import a splice log: after 60 arcs of a splicer its charts begin to speak. They compare every machine with its own past.</source>
        <translation>Anote empalmes en Hoy o importe un registro de empalmes: tras 60 arcos de una empalmadora sus gráficos empiezan a hablar. Comparan cada máquina con su propio pasado.</translation>
    </message>
    <message>
        <source>Go to Today</source>
        <translation>Ir a Hoy</translation>
    </message>
    <message>
        <source>taken up again</source>
        <translation>retomada</translation>
    </message>
    <message>
        <source>Next splicer</source>
        <translation>Empalmadora siguiente</translation>
    </message>
    <message>
        <source>Previous splicer</source>
        <translation>Empalmadora anterior</translation>
    </message>
    <message>
        <source>Go to the next signal</source>
        <translation>Ir a la señal siguiente</translation>
    </message>
    <message>
        <source>Go to the signal before</source>
        <translation>Ir a la señal anterior</translation>
    </message>
    <message>
        <source>Start the care the signal calls for</source>
        <translation>Empezar el cuidado que pide la señal</translation>
    </message>
    <message>
        <source>Dismiss the signal with a reason</source>
        <translation>Descartar la señal con un motivo</translation>
    </message>
    <message>
        <source>Show the readings behind the charts</source>
        <translation>Mostrar las lecturas tras los gráficos</translation>
    </message>
    <message>
        <source>Move the baseline</source>
        <translation>Mover la línea base</translation>
    </message>
    <message>
        <source>Show the other charts</source>
        <translation>Mostrar los otros gráficos</translation>
    </message>
    <message>
        <source>Save the charts as pictures</source>
        <translation>Guardar los gráficos como imágenes</translation>
    </message>
    <message>
        <source>Copy the numbers of the charts as CSV</source>
        <translation>Copiar los números de los gráficos como CSV</translation>
    </message>
    <message>
        <source>Show all arcs</source>
        <translation>Mostrar todos los arcos</translation>
    </message>
    <message>
        <source>Drift</source>
        <translation>Deriva</translation>
    </message>
    <message>
        <source>Looking at the losses…</source>
        <translation>Mirando las pérdidas…</translation>
    </message>
    <message>
        <source>one groove</source>
        <translation>una ranura</translation>
    </message>
    <message>
        <source>%1 grooves</source>
        <translation>%1 ranuras</translation>
    </message>
    <message>
        <source>one false signal per %1 arcs, all charts together</source>
        <translation>una señal falsa cada %1 arcos, todos los gráficos juntos</translation>
    </message>
    <message>
        <source>baseline arcs %1–%2, shaded</source>
        <translation>línea base: arcos %1–%2, sombreada</translation>
    </message>
    <message>
        <source>no baseline yet</source>
        <translation>aún sin línea base</translation>
    </message>
    <message>
        <source>Dismiss: %1</source>
        <translation>Descartar: %1</translation>
    </message>
    <message>
        <source>The signal is put aside and stays in the book with your reason. The charts go on watching; the reasons show a supervisor how often the budget cries wolf.</source>
        <translation>La señal se aparta y queda en la bitácora con su motivo. Los gráficos siguen vigilando; los motivos muestran al supervisor cuántas veces el presupuesto da falsa alarma.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Descartar</translation>
    </message>
    <message>
        <source>fibre or cable of this job, not the machine</source>
        <translation>fibra o cable de esta obra, no la máquina</translation>
    </message>
    <message>
        <source>training splices</source>
        <translation>empalmes de práctica</translation>
    </message>
    <message>
        <source>already looked at, nothing found</source>
        <translation>ya revisado, no se halló nada</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Save the charts as SVG and PNG</source>
        <translation>Guardar los gráficos como SVG y PNG</translation>
    </message>
</context>
<context>
    <name>arc::ui::DueDetail</name>
    <message>
        <source>based on</source>
        <translation>se basa en</translation>
    </message>
    <message>
        <source>since</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>if not</source>
        <translation>si no</translation>
    </message>
    <message>
        <source>takes</source>
        <translation>lleva</translation>
    </message>
    <message>
        <source>needs</source>
        <translation>necesita</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Overridden by %1: %2</source>
        <translation>Levantado por %1: %2</translation>
    </message>
    <message>
        <source>about %1 min</source>
        <translation>unos %1 min</translation>
    </message>
    <message>
        <source>Start  Enter</source>
        <translation>Empezar  Intro</translation>
    </message>
    <message>
        <source>There is no card for this</source>
        <translation>No hay ficha para esto</translation>
    </message>
</context>
<context>
    <name>arc::ui::ExceptionList</name>
    <message>
        <source>waits for a disposition</source>
        <translation>espera resolución</translation>
    </message>
    <message>
        <source>%1 by %2: %3</source>
        <translation>%1 por %2: %3</translation>
    </message>
    <message>
        <source>rejected by %1: %2</source>
        <translation>rechazada por %1: %2</translation>
    </message>
</context>
<context>
    <name>arc::ui::ExceptionPanel</name>
    <message>
        <source>agreed with the client</source>
        <translation>acordado con el cliente</translation>
    </message>
    <message>
        <source>measured from both ends, within the limit</source>
        <translation>medido desde ambos extremos, dentro del límite</translation>
    </message>
    <message>
        <source>spare fibre, not in use</source>
        <translation>fibra de reserva, sin uso</translation>
    </message>
    <message>
        <source>calibrated afterwards, losses unchanged</source>
        <translation>calibrado después, pérdidas sin cambio</translation>
    </message>
    <message>
        <source>Accept  A</source>
        <translation>Aceptar  A</translation>
    </message>
    <message>
        <source>Reject  X</source>
        <translation>Rechazar  X</translation>
    </message>
    <message>
        <source>Exceptions</source>
        <translation>Excepciones</translation>
    </message>
    <message>
        <source>Accept the chosen exceptions, with a reason</source>
        <translation>Aceptar las excepciones elegidas, con un motivo</translation>
    </message>
    <message>
        <source>Reject the chosen exceptions, with a reason</source>
        <translation>Rechazar las excepciones elegidas, con un motivo</translation>
    </message>
    <message>
        <source>No exceptions</source>
        <translation>Sin excepciones</translation>
    </message>
    <message>
        <source>%1 exceptions, all decided</source>
        <translation>%1 excepciones, todas resueltas</translation>
    </message>
    <message>
        <source>%1 exceptions, %2 wait for a disposition</source>
        <translation>%1 excepciones, %2 esperan resolución</translation>
    </message>
    <message>
        <source>%1 exceptions</source>
        <translation>%1 excepciones</translation>
    </message>
    <message>
        <source>Reject: %1</source>
        <translation>Rechazar: %1</translation>
    </message>
    <message>
        <source>Accept: %1</source>
        <translation>Aceptar: %1</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Reject</source>
        <translation>Rechazar</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Aceptar</translation>
    </message>
    <message>
        <source>Not saved. Press Enter to try again.</source>
        <translation>No se guardó. Pulse Intro para intentarlo de nuevo.</translation>
    </message>
</context>
<context>
    <name>arc::ui::FieldEdit</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation>Imágenes (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>%1 is larger than 8 MB; choose another</source>
        <translation>%1 pasa de 8 MB; elija otra</translation>
    </message>
    <message>
        <source>%1 cannot be read; choose another</source>
        <translation>%1 no se puede leer; elija otra</translation>
    </message>
    <message>
        <source>Choose a photo…   Space</source>
        <translation>Elegir una foto…   Espacio</translation>
    </message>
    <message>
        <source>%1 is no JPEG or PNG; choose another</source>
        <translation>%1 no es JPEG ni PNG; elija otra</translation>
    </message>
</context>
<context>
    <name>arc::ui::Finder</name>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>What do you want? Type a few letters</source>
        <translation>¿Qué desea? Escriba unas letras</translation>
    </message>
    <message>
        <source>Find an action, a tool, a job</source>
        <translation>Buscar una acción, una herramienta, una obra</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Encontrado</translation>
    </message>
    <message>
        <source>everywhere</source>
        <translation>en todas partes</translation>
    </message>
    <message>
        <source>Drift of %1</source>
        <translation>Deriva de %1</translation>
    </message>
    <message>
        <source>Closeout of %1</source>
        <translation>Cierre de %1</translation>
    </message>
    <message>
        <source>job</source>
        <translation>obra</translation>
    </message>
    <message>
        <source>Splice on %1</source>
        <translation>Empalmar en %1</translation>
    </message>
    <message>
        <source>Search all splices for “%1”</source>
        <translation>Buscar «%1» en todos los empalmes</translation>
    </message>
    <message>
        <source>care card</source>
        <translation>ficha de cuidado</translation>
    </message>
</context>
<context>
    <name>arc::ui::FirstRun</name>
    <message>
        <source>mass splicer, 12 grooves</source>
        <translation>empalmadora de cinta, 12 ranuras</translation>
    </message>
    <message>
        <source>mass splicer, 4 grooves</source>
        <translation>empalmadora de cinta, 4 ranuras</translation>
    </message>
    <message>
        <source>mass splicer, 16 grooves</source>
        <translation>empalmadora de cinta, 16 ranuras</translation>
    </message>
    <message>
        <source>single-fibre splicer</source>
        <translation>empalmadora de fibra única</translation>
    </message>
    <message>
        <source>A new logbook</source>
        <translation>Una bitácora nueva</translation>
    </message>
    <message>
        <source>Three questions and you can splice. Arcwright then watches the losses and says when a tool wants care, and which.</source>
        <translation>Tres preguntas y puede empalmar. Después Arcwright vigila las pérdidas y dice cuándo una herramienta necesita cuidado, y cuál.</translation>
    </message>
    <message>
        <source>Your crew label</source>
        <translation>Su nombre en la cuadrilla</translation>
    </message>
    <message>
        <source>a name or a crew label; may stay empty</source>
        <translation>un nombre o una sigla; puede quedar vacío</translation>
    </message>
    <message>
        <source>Who is at the keyboard?</source>
        <translation>¿Quién está al teclado?</translation>
    </message>
    <message>
        <source>Kind of splicer</source>
        <translation>Tipo de empalmadora</translation>
    </message>
    <message>
        <source>Label of the splicer</source>
        <translation>Etiqueta de la empalmadora</translation>
    </message>
    <message>
        <source>Which splicer do you work with, and what do you call it?</source>
        <translation>¿Con qué empalmadora trabaja y cómo la llama?</translation>
    </message>
    <message>
        <source>Label of the job</source>
        <translation>Etiqueta de la obra</translation>
    </message>
    <message>
        <source>for example HR-B; may stay empty</source>
        <translation>por ejemplo HR-B; puede quedar vacía</translation>
    </message>
    <message>
        <source>Start the logbook</source>
        <translation>Empezar la bitácora</translation>
    </message>
    <message>
        <source>Look at a demo crew first</source>
        <translation>Ver antes una cuadrilla de ejemplo</translation>
    </message>
    <message>
        <source>Skip, I will import a log</source>
        <translation>Saltar, importaré un registro</translation>
    </message>
    <message>
        <source>Label of the closure</source>
        <translation>Etiqueta de la caja</translation>
    </message>
    <message>
        <source>What is the job called, and the closure on the table?</source>
        <translation>¿Cómo se llama la obra, y la caja que está en la mesa?</translation>
    </message>
</context>
<context>
    <name>arc::ui::GentlerFirst</name>
    <message>
        <source>Gentler care comes first</source>
        <translation>Primero el cuidado más suave</translation>
    </message>
    <message>
        <source>“%1” on %2 is the more drastic step. Gentle before drastic (common practice): this was not tried yet.</source>
        <translation>«%1» en %2 es el paso más drástico. Lo suave antes que lo drástico (práctica común): esto aún no se ha probado.</translation>
    </message>
    <message>
        <source>Do this instead</source>
        <translation>Hacer esto en su lugar</translation>
    </message>
    <message>
        <source>Do this instead: %1</source>
        <translation>Hacer esto en su lugar: %1</translation>
    </message>
    <message>
        <source>Or go on with it, and say why</source>
        <translation>O seguir con ello y decir por qué</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>kept in the record</source>
        <translation>queda en el registro</translation>
    </message>
    <message>
        <source>Leave it  Esc</source>
        <translation>Dejarlo  Esc</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>Seguir con ello</translation>
    </message>
</context>
<context>
    <name>arc::ui::GrooveStrip</name>
    <message>
        <source>Each groove alone</source>
        <translation>Cada ranura por separado</translation>
    </message>
    <message>
        <source>no groove stands out</source>
        <translation>ninguna ranura destaca</translation>
    </message>
    <message>
        <source>stands out: groove %1</source>
        <translation>destaca: ranura %1</translation>
    </message>
    <message>
        <source>each groove alone</source>
        <translation>cada ranura por separado</translation>
    </message>
</context>
<context>
    <name>arc::ui::Help</name>
    <message>
        <source>Everywhere</source>
        <translation>En todas partes</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>The losses are what they were in the baseline. Go on.</source>
        <translation>Las pérdidas son las de la línea base. Siga.</translation>
    </message>
    <message>
        <source>Something moves, but it may be luck. Clean early; nothing has to stop.</source>
        <translation>Algo se mueve, pero puede ser azar. Limpie pronto; no hay que parar nada.</translation>
    </message>
    <message>
        <source>A chart has signalled. Do the care it names before the next closure.</source>
        <translation>Un gráfico dio señal. Haga el cuidado que nombra antes de la caja siguiente.</translation>
    </message>
    <message>
        <source>It drifted, care was done, and the losses came back down.</source>
        <translation>Derivó, se hizo el cuidado y las pérdidas volvieron a bajar.</translation>
    </message>
    <message>
        <source>Fewer than 60 arcs yet: there is nothing to compare with.</source>
        <translation>Menos de 60 arcos todavía: no hay con qué comparar.</translation>
    </message>
    <message>
        <source>How it decides</source>
        <translation>Cómo decide</translation>
    </message>
    <message>
        <source>Every splicer is compared with its own past: a stretch of arcs, the baseline, says what its losses look like when all is well. Charts add up how far the newer losses lie above it: one chart for all grooves together, one for each groove alone, more for spread, cleave angles and re-splices.</source>
        <translation>Cada empalmadora se compara con su propio pasado: un tramo de arcos, la línea base, dice cómo son sus pérdidas cuando todo va bien. Los gráficos suman cuánto quedan por encima las pérdidas nuevas: un gráfico para todas las ranuras juntas, uno para cada ranura por separado, y otros para la dispersión, los ángulos de corte y los reempalmes.</translation>
    </message>
    <message>
        <source>A chart speaks when its sum passes a limit. The limits are set so that all charts of a splicer together give about one false signal per so many arcs, the false-alarm budget. A smaller budget finds faults earlier and cries wolf more often.</source>
        <translation>Un gráfico habla cuando su suma pasa un límite. Los límites se fijan para que todos los gráficos de una empalmadora juntos den más o menos una señal falsa cada tantos arcos: el presupuesto de falsas alarmas. Un presupuesto menor halla antes los fallos y da más falsas alarmas.</translation>
    </message>
    <message>
        <source>A signal names when it probably began, with a span; what probably caused it, with the other causes and their weights; and the evidence, which you can check by hand. &quot;Likely&quot; means likely: a cause is never certain from losses alone, and the splicer&apos;s own losses are estimates.</source>
        <translation>Una señal dice cuándo empezó probablemente, con un margen; qué la causó probablemente, con las otras causas y sus pesos; y los indicios, que usted puede comprobar a mano. «Probable» quiere decir probable: por las pérdidas solas una causa nunca es segura, y las pérdidas que da la empalmadora son estimaciones.</translation>
    </message>
    <message>
        <source>After each care action the next arcs are compared with those before it, and the page says whether it helped.</source>
        <translation>Después de cada cuidado se comparan los arcos siguientes con los anteriores, y la página dice si ayudó.</translation>
    </message>
    <message>
        <source>States and charts</source>
        <translation>Estados y gráficos</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Help pages</source>
        <translation>Páginas de ayuda</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>What to expect of it</source>
        <translation>Qué se puede esperar</translation>
    </message>
    <message>
        <source>Measured on simulated logs, 100 of each fault, at one false signal in 1,000 arcs; no field record is behind these figures.</source>
        <translation>Medido en registros simulados, 100 de cada fallo, con una señal falsa cada 1000 arcos; ningún registro de campo respalda estas cifras.</translation>
    </message>
    <message>
        <source>Its limits: slow electrode wear is found late and sometimes taken for something else. With one splicer alone on a job, a fibre and a machine that change together cannot be told apart: make a few splices on another splicer. Lots of fibre that differ much raise more false signals than promised.</source>
        <translation>Sus límites: el desgaste lento de los electrodos se ve tarde y a veces se toma por otra cosa. Con una sola empalmadora en la obra no se puede distinguir una fibra de una máquina que cambian a la vez: haga unos empalmes en otra empalmadora. Los lotes de fibra muy distintos dan más señales falsas de las prometidas.</translation>
    </message>
    <message>
        <source>Simulated fault</source>
        <translation>Fallo simulado</translation>
    </message>
    <message>
        <source>arcs to the signal</source>
        <translation>arcos hasta la señal</translation>
    </message>
    <message>
        <source>cause named right</source>
        <translation>causa acertada</translation>
    </message>
</context>
<context>
    <name>arc::ui::Histogram</name>
    <message>
        <source>Spread of the losses</source>
        <translation>Reparto de las pérdidas</translation>
    </message>
    <message>
        <source>no splices</source>
        <translation>sin empalmes</translation>
    </message>
    <message>
        <source>%1 splices, most at %2 dB</source>
        <translation>%1 empalmes, la mayoría en %2 dB</translation>
    </message>
    <message>
        <source>%1 dB and more</source>
        <translation>%1 dB y más</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>límite %1</translation>
    </message>
</context>
<context>
    <name>arc::ui::HistorySheet</name>
    <message>
        <source>History</source>
        <translation>Historia</translation>
    </message>
    <message>
        <source>History: %1</source>
        <translation>Historia: %1</translation>
    </message>
    <message>
        <source>Close  Esc</source>
        <translation>Cerrar  Esc</translation>
    </message>
    <message>
        <source>Looking for the record…</source>
        <translation>Buscando el registro…</translation>
    </message>
    <message>
        <source>Looking for the record of a journal line</source>
        <translation>Buscando el registro de una línea del diario</translation>
    </message>
    <message>
        <source>This line wrote many records at once, as an import does. Find one of them by Search on Today, then ask for its history.</source>
        <translation>Esta línea escribió muchos registros a la vez, como una importación. Busque uno en Hoy y pida luego su historia.</translation>
    </message>
    <message>
        <source>Nothing is written about it yet.</source>
        <translation>Aún no hay nada escrito sobre esto.</translation>
    </message>
    <message>
        <source>Written once and never changed.</source>
        <translation>Escrito una vez y nunca cambiado.</translation>
    </message>
    <message>
        <source>%1 entries, oldest first. Nothing is overwritten; the last one counts.</source>
        <translation>%1 entradas, la más antigua primero. Nada se sobrescribe; vale la última.</translation>
    </message>
</context>
<context>
    <name>arc::ui::ImportPanel</name>
    <message>
        <source>What do the files hold?</source>
        <translation>¿Qué contienen los archivos?</translation>
    </message>
    <message>
        <source>1  Splice log</source>
        <translation>1  Registro de empalmes</translation>
    </message>
    <message>
        <source>2  Care events</source>
        <translation>2  Cuidados</translation>
    </message>
    <message>
        <source>3  Measured losses</source>
        <translation>3  Pérdidas medidas</translation>
    </message>
    <message>
        <source>Choose files…</source>
        <translation>Elegir archivos…</translation>
    </message>
    <message>
        <source>Back to splicing  Esc</source>
        <translation>Volver a empalmar  Esc</translation>
    </message>
    <message>
        <source>Import progress</source>
        <translation>Avance de la importación</translation>
    </message>
    <message>
        <source>Stop, take in nothing</source>
        <translation>Parar, no tomar nada</translation>
    </message>
    <message>
        <source>rows read</source>
        <translation>filas leídas</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nuevas</translation>
    </message>
    <message>
        <source>known already</source>
        <translation>ya conocidas</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>apartadas</translation>
    </message>
    <message>
        <source>stopping…</source>
        <translation>parando…</translation>
    </message>
    <message>
        <source>Files to take in</source>
        <translation>Archivos por tomar</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation>Tablas (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importar</translation>
    </message>
    <message>
        <source>reading…</source>
        <translation>leyendo…</translation>
    </message>
    <message>
        <source>Stopped; of this file nothing was taken in.</source>
        <translation>Detenido; de este archivo no se tomó nada.</translation>
    </message>
    <message>
        <source>%1 of %2 files were taken in before.</source>
        <translation>Antes se tomaron %1 de %2 archivos.</translation>
    </message>
    <message>
        <source>Done; some rows were set aside and wait for you</source>
        <translation>Hecho; algunas filas se apartaron y le esperan</translation>
    </message>
    <message>
        <source>Done; everything was known already</source>
        <translation>Hecho; ya se conocía todo</translation>
    </message>
    <message>
        <source>Done; every row landed</source>
        <translation>Hecho; entraron todas las filas</translation>
    </message>
    <message>
        <source>1 row waits to be mended  M</source>
        <translation>1 fila espera corrección  M</translation>
    </message>
    <message>
        <source>%1 rows wait to be mended  M</source>
        <translation>%1 filas esperan corrección  M</translation>
    </message>
</context>
<context>
    <name>arc::ui::JobBar</name>
    <message numerus="yes">
        <source>about %n s left</source>
        <translation>
            <numerusform>queda %n s</numerusform>
            <numerusform>quedan unos %n s</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n min left</source>
        <translation>
            <numerusform>queda %n min</numerusform>
            <numerusform>quedan unos %n min</numerusform>
        </translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Avance</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Stop: %1</source>
        <translation>Parar: %1</translation>
    </message>
</context>
<context>
    <name>arc::ui::JobRecords</name>
    <message>
        <source>Looking at the jobs</source>
        <translation>Mirando las obras</translation>
    </message>
</context>
<context>
    <name>arc::ui::JobSheet</name>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Job label</source>
        <translation>Etiqueta de la obra</translation>
    </message>
    <message>
        <source>Title for people</source>
        <translation>Título para las personas</translation>
    </message>
    <message>
        <source>Acceptance rule</source>
        <translation>Regla de aceptación</translation>
    </message>
    <message>
        <source>Limit per splice, dB</source>
        <translation>Límite por empalme, dB</translation>
    </message>
    <message>
        <source>Average, dB</source>
        <translation>Media, dB</translation>
    </message>
    <message>
        <source>Ceiling, dB</source>
        <translation>Techo, dB</translation>
    </message>
    <message>
        <source>Attempts before keeping</source>
        <translation>Intentos antes de conservar</translation>
    </message>
    <message>
        <source>Cable</source>
        <translation>Cable</translation>
    </message>
    <message>
        <source>Cable label</source>
        <translation>Etiqueta del cable</translation>
    </message>
    <message>
        <source>Fibres in the cable</source>
        <translation>Fibras del cable</translation>
    </message>
    <message>
        <source>Tubes or ribbons</source>
        <translation>Tubos o cintas</translation>
    </message>
    <message>
        <source>Colour order</source>
        <translation>Orden de colores</translation>
    </message>
    <message>
        <source>Fibre type</source>
        <translation>Tipo de fibra</translation>
    </message>
    <message>
        <source>Length, km</source>
        <translation>Longitud, km</translation>
    </message>
    <message>
        <source>Closure label</source>
        <translation>Etiqueta de la caja</translation>
    </message>
    <message>
        <source>Splice plan</source>
        <translation>Plan de empalmes</translation>
    </message>
    <message>
        <source>1-144 straight, or 1-12 to 25-36; 13-24 to 1-12</source>
        <translation>1-144 straight, o 1-12 to 25-36; 13-24 to 1-12</translation>
    </message>
    <message>
        <source>may be empty</source>
        <translation>puede quedar vacío</translation>
    </message>
    <message>
        <source>tubes of %1</source>
        <translation>tubos de %1</translation>
    </message>
    <message>
        <source>ribbons of %1</source>
        <translation>cintas de %1</translation>
    </message>
    <message>
        <source>Leave  Esc</source>
        <translation>Salir  Esc</translation>
    </message>
    <message>
        <source>a new job</source>
        <translation>una obra nueva</translation>
    </message>
    <message>
        <source>add to %1</source>
        <translation>añadir a %1</translation>
    </message>
    <message>
        <source>a new cable</source>
        <translation>un cable nuevo</translation>
    </message>
    <message>
        <source>%1, %2 fibres</source>
        <translation>%1, %2 fibras</translation>
    </message>
    <message>
        <source>%1 splices planned: %2</source>
        <translation>%1 empalmes previstos: %2</translation>
    </message>
    <message>
        <source>closure %1 of job %2</source>
        <translation>caja %1 de la obra %2</translation>
    </message>
    <message>
        <source>How they are stripped</source>
        <translation>Cómo se pelan</translation>
    </message>
    <message>
        <source>ribbon, not said which</source>
        <translation>cinta, sin decir cuál</translation>
    </message>
    <message>
        <source>flat ribbon</source>
        <translation>cinta plana</translation>
    </message>
    <message>
        <source>web-type ribbon: clean after each strip</source>
        <translation>cinta tipo malla: limpiar tras cada pelado</translation>
    </message>
    <message>
        <source>loose; several at once are ribbonised</source>
        <translation>sueltas; varias a la vez se encintan</translation>
    </message>
    <message>
        <source>Closure</source>
        <translation>Caja</translation>
    </message>
    <message>
        <source>Cable on side B</source>
        <translation>Cable del lado B</translation>
    </message>
    <message>
        <source>Loss that counts</source>
        <translation>Pérdida que cuenta</translation>
    </message>
    <message>
        <source>Plan from CSV…  Ctrl+O</source>
        <translation>Plan desde CSV…  Ctrl+O</translation>
    </message>
    <message>
        <source>estimate, or one way</source>
        <translation>estimada, o en un sentido</translation>
    </message>
    <message>
        <source>mean of both ways</source>
        <translation>media de ambos sentidos</translation>
    </message>
    <message>
        <source>Save it and splice  Ctrl+Enter</source>
        <translation>Guardar y empalmar  Ctrl+Intro</translation>
    </message>
    <message>
        <source>none, or the same</source>
        <translation>ninguno, o el mismo</translation>
    </message>
    <message>
        <source>a new closure</source>
        <translation>una caja nueva</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>cambiar %1</translation>
    </message>
    <message>
        <source>none, only the job</source>
        <translation>ninguna, solo la obra</translation>
    </message>
    <message>
        <source>Splice plan with the columns fibre_a and fibre_b</source>
        <translation>Plan de empalmes con las columnas fibre_a y fibre_b</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation>Tablas (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation>obra %1</translation>
    </message>
</context>
<context>
    <name>arc::ui::JobTree</name>
    <message>
        <source>Jobs and closures</source>
        <translation>Obras y cajas</translation>
    </message>
    <message>
        <source>%1 spliced, no plan</source>
        <translation>%1 empalmadas, sin plan</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>, %1 open</source>
        <translation>, %1 sin resolver</translation>
    </message>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation>obra %1</translation>
    </message>
    <message>
        <source>Record no. %1</source>
        <translation>Acta n.º %1</translation>
    </message>
    <message>
        <source>number given twice; %1</source>
        <translation>número dado dos veces; %1</translation>
    </message>
    <message>
        <source>superseded by no. %1</source>
        <translation>sustituida por la n.º %1</translation>
    </message>
    <message>
        <source>Issued on %1 by %2</source>
        <translation>Emitida el %1 por %2</translation>
    </message>
</context>
<context>
    <name>arc::ui::JournalPanel</name>
    <message>
        <source>%1 lines; each carries the hash of the one before. Enter: the history of what a line is about.</source>
        <translation>%1 líneas; cada una lleva la huella de la anterior. Intro: la historia de lo que trata una línea.</translation>
    </message>
</context>
<context>
    <name>arc::ui::JournalTable</name>
    <message>
        <source>when</source>
        <translation>cuándo</translation>
    </message>
    <message>
        <source>who</source>
        <translation>quién</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>from where</source>
        <translation>desde dónde</translation>
    </message>
    <message>
        <source>row</source>
        <translation>fila</translation>
    </message>
</context>
<context>
    <name>arc::ui::JournalView</name>
    <message>
        <source>Journal lines</source>
        <translation>Líneas del diario</translation>
    </message>
    <message>
        <source>The chosen line</source>
        <translation>La línea elegida</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>journal row %1</source>
        <translation>fila %1 del diario</translation>
    </message>
    <message>
        <source>hash %1…</source>
        <translation>huella %1…</translation>
    </message>
</context>
<context>
    <name>arc::ui::Keeper</name>
    <message>
        <source>Checking the logbook</source>
        <translation>Revisando la bitácora</translation>
    </message>
    <message>
        <source>Copying the logbook</source>
        <translation>Copiando la bitácora</translation>
    </message>
</context>
<context>
    <name>arc::ui::KitPage</name>
    <message>
        <source>, at use %1</source>
        <translation>, en el uso %1</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Add a tool</source>
        <translation>Añadir una herramienta</translation>
    </message>
    <message>
        <source>No tools yet</source>
        <translation>Aún no hay herramientas</translation>
    </message>
    <message>
        <source>Add the splicer you work with first, then its cleaver and stripper. From then on the book counts arcs, cleaves and strips, and says when each tool wants care.</source>
        <translation>Añada primero la empalmadora con la que trabaja, después su cortadora y su peladora. Desde entonces la bitácora cuenta arcos, cortes y pelados, y dice cuándo cada herramienta necesita cuidado.</translation>
    </message>
    <message>
        <source>Add the first tool</source>
        <translation>Añadir la primera herramienta</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Herramientas</translation>
    </message>
    <message>
        <source>Care for it</source>
        <translation>Cuidarla</translation>
    </message>
    <message>
        <source>Its drift</source>
        <translation>Su deriva</translation>
    </message>
    <message>
        <source>Pair cleaver…</source>
        <translation>Cortadora…</translation>
    </message>
    <message>
        <source>Out of service</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Correct counter…</source>
        <translation>Contador…</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historia</translation>
    </message>
    <message>
        <source>Pair a cleaver with the chosen splicer</source>
        <translation>Asignar una cortadora a la empalmadora elegida</translation>
    </message>
    <message>
        <source>Take the chosen tool out of service, or back</source>
        <translation>Retirar del servicio la herramienta elegida, o devolverla</translation>
    </message>
    <message>
        <source>Correct the counter of the chosen tool</source>
        <translation>Corregir el contador de la herramienta elegida</translation>
    </message>
    <message>
        <source>Looking at the tools…</source>
        <translation>Mirando las herramientas…</translation>
    </message>
    <message>
        <source>uses in the book: %1</source>
        <translation>usos en la bitácora: %1</translation>
    </message>
    <message>
        <source>own counter: %1</source>
        <translation>contador propio: %1</translation>
    </message>
    <message>
        <source>last used %1</source>
        <translation>último uso: %1</translation>
    </message>
    <message>
        <source>cleaver: %1</source>
        <translation>cortadora: %1</translation>
    </message>
    <message>
        <source>prepares for %1</source>
        <translation>prepara para %1</translation>
    </message>
    <message>
        <source>Back in service</source>
        <translation>Reponer</translation>
    </message>
    <message>
        <source>Which cleaver prepares for %1?</source>
        <translation>¿Qué cortadora prepara para %1?</translation>
    </message>
    <message>
        <source>From now on, until the next pairing. Cleaves are counted for it.</source>
        <translation>Desde ahora y hasta la próxima asignación. Los cortes se cuentan para ella.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Splicers: %1 · cleavers: %2 · strippers: %3</source>
        <translation>Empalmadoras: %1 · cortadoras: %2 · peladoras: %3</translation>
    </message>
</context>
<context>
    <name>arc::ui::LimitsSheet</name>
    <message>
        <source>Limits of care</source>
        <translation>Límites de cuidado</translation>
    </message>
    <message>
        <source>They hold for this logbook. An empty line is as shipped (common practice). What a card says itself, such as every how many arcs, is changed in the card.</source>
        <translation>Valen para este cuaderno. Una línea vacía es como de fábrica (práctica común). Lo que dice una ficha, como cada cuántos arcos, se cambia en la ficha.</translation>
    </message>
    <message>
        <source>Calibration owed after a change of temperature of, °C</source>
        <translation>Calibración pendiente tras un cambio de temperatura de, °C</translation>
    </message>
    <message>
        <source>Calibration owed after a change of air pressure of, hPa</source>
        <translation>Calibración pendiente tras un cambio de presión de, hPa</translation>
    </message>
    <message>
        <source>Calibration owed after days without an arc</source>
        <translation>Calibración pendiente tras días sin un arco</translation>
    </message>
    <message>
        <source>These three, so many times further out for a splicer that adjusts its arc itself</source>
        <translation>Estos tres, tantas veces más lejos para una empalmadora que ajusta sola su arco</translation>
    </message>
    <message>
        <source>Calibration runs in vain before a diagnostic run is owed</source>
        <translation>Calibraciones en vano antes de que toque un diagnóstico</translation>
    </message>
    <message>
        <source>Arcs of a pair of electrodes</source>
        <translation>Arcos de un par de electrodos</translation>
    </message>
    <message>
        <source>as the card says</source>
        <translation>como dice la ficha</translation>
    </message>
    <message>
        <source>Order parts that will be used up within days</source>
        <translation>Pedir piezas que se gastarán en días</translation>
    </message>
    <message>
        <source>Leave as it was  Esc</source>
        <translation>Dejar como estaba  Esc</translation>
    </message>
    <message>
        <source>Keep these limits</source>
        <translation>Guardar estos límites</translation>
    </message>
    <message>
        <source>A ribbon cable that does not say what it is counts as</source>
        <translation>Un cable de cinta que no dice cuál cuenta como</translation>
    </message>
    <message>
        <source>flat ribbon</source>
        <translation>cinta plana</translation>
    </message>
    <message>
        <source>web-type ribbon</source>
        <translation>cinta de tipo malla</translation>
    </message>
    <message>
        <source>ribbonised</source>
        <translation>encintado</translation>
    </message>
    <message>
        <source>limits of care</source>
        <translation>límites de cuidado</translation>
    </message>
</context>
<context>
    <name>arc::ui::LogbookPage</name>
    <message>
        <source>Logbook</source>
        <translation>Bitácora</translation>
    </message>
    <message>
        <source>What was written, by whom and from where; handing over, taking in, and copies</source>
        <translation>Qué se escribió, quién y desde dónde; entregar, tomar y copias</translation>
    </message>
    <message>
        <source>Parts of the logbook</source>
        <translation>Partes de la bitácora</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Diario</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Tomar</translation>
    </message>
    <message>
        <source>Edited twice</source>
        <translation>Editado dos veces</translation>
    </message>
    <message>
        <source>Laptops</source>
        <translation>Portátiles</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Copias</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Logbook: %1</source>
        <translation>Bitácora: %1</translation>
    </message>
</context>
<context>
    <name>arc::ui::LossPad</name>
    <message>
        <source>fibre</source>
        <translation>fibra</translation>
    </message>
    <message>
        <source>loss dB</source>
        <translation>pérdida dB</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation>intento</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>veredicto</translation>
    </message>
    <message>
        <source>accept</source>
        <translation>aceptar</translation>
    </message>
    <message>
        <source>accept, high</source>
        <translation>aceptar, alto</translation>
    </message>
    <message>
        <source>re-splice</source>
        <translation>reempalmar</translation>
    </message>
    <message>
        <source>high: note it</source>
        <translation>alto: anótelo</translation>
    </message>
    <message>
        <source>over ceiling</source>
        <translation>sobre el techo</translation>
    </message>
    <message>
        <source>Enter saves it</source>
        <translation>Intro lo guarda</translation>
    </message>
    <message>
        <source>kept, noted</source>
        <translation>conservado, con nota</translation>
    </message>
    <message>
        <source>high loss</source>
        <translation>pérdida alta</translation>
    </message>
    <message>
        <source>bubble or line</source>
        <translation>burbuja o línea</translation>
    </message>
    <message>
        <source>bad cleave</source>
        <translation>mal corte</translation>
    </message>
    <message>
        <source>fibre broke</source>
        <translation>se rompió la fibra</translation>
    </message>
    <message>
        <source>sleeve misplaced</source>
        <translation>manguito mal puesto</translation>
    </message>
    <message>
        <source>typed at the wrong fibre</source>
        <translation>escrito en otra fibra</translation>
    </message>
    <message>
        <source>fibre broke in the tray</source>
        <translation>la fibra se rompió en la bandeja</translation>
    </message>
    <message>
        <source>test splice</source>
        <translation>empalme de prueba</translation>
    </message>
    <message>
        <source>entered twice</source>
        <translation>anotado dos veces</translation>
    </message>
    <message>
        <source>same value on every attempt</source>
        <translation>el mismo valor en cada intento</translation>
    </message>
    <message>
        <source>no fibre left to re-splice</source>
        <translation>no queda fibra para reempalmar</translation>
    </message>
    <message>
        <source>mismatched fibre, agreed with the client</source>
        <translation>fibra distinta, acordado con el cliente</translation>
    </message>
    <message>
        <source>Re-splice  R</source>
        <translation>Reempalmar  R</translation>
    </message>
    <message>
        <source>Void  V</source>
        <translation>Anular  V</translation>
    </message>
    <message>
        <source>Re-splice this fibre or ribbon</source>
        <translation>Reempalmar esta fibra o cinta</translation>
    </message>
    <message>
        <source>Keep a high splice with a note</source>
        <translation>Conservar un empalme alto con una nota</translation>
    </message>
    <message>
        <source>Void a reading with a reason</source>
        <translation>Anular una lectura con un motivo</translation>
    </message>
    <message>
        <source>Paste the losses of a ribbon</source>
        <translation>Pegar las pérdidas de una cinta</translation>
    </message>
    <message>
        <source>Brought back from before: typed and not saved yet. Enter saves it, Esc drops it.</source>
        <translation>Recuperado de antes: escrito y aún sin guardar. Intro lo guarda, Esc lo borra.</translation>
    </message>
    <message>
        <source>Re-splice the whole ribbon: why?</source>
        <translation>Reempalmar toda la cinta: ¿por qué?</translation>
    </message>
    <message>
        <source>Re-splice fibre %1: why?</source>
        <translation>Reempalmar la fibra %1: ¿por qué?</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Re-splice</source>
        <translation>Reempalmar</translation>
    </message>
    <message>
        <source>Keep it although it is over the limit: why?</source>
        <translation>Conservarlo aunque pasa del límite: ¿por qué?</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Conservar</translation>
    </message>
    <message>
        <source>Void the last reading of fibre %1: why?</source>
        <translation>Anular la última lectura de la fibra %1: ¿por qué?</translation>
    </message>
    <message>
        <source>Void</source>
        <translation>Anular</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>tras %1</translation>
    </message>
    <message>
        <source>cannot be</source>
        <translation>no puede ser</translation>
    </message>
    <message>
        <source>type digits, Enter</source>
        <translation>cifras, Intro</translation>
    </message>
    <message>
        <source>re-splice, then digits</source>
        <translation>reempalme, luego cifras</translation>
    </message>
    <message>
        <source>Average so far %1 dB, over the %2 agreed.</source>
        <translation>Media hasta ahora %1 dB, sobre los %2 acordados.</translation>
    </message>
    <message>
        <source>fibre %1 at %2</source>
        <translation>fibra %1 con %2</translation>
    </message>
    <message>
        <source>Re-splice the ribbon, then type all its fibres. Esc leaves it as it is.</source>
        <translation>Reempalme la cinta y escriba todas sus fibras. Esc la deja como está.</translation>
    </message>
    <message>
        <source>%1: re-splice the ribbon and type it again, or K keeps it with a note.</source>
        <translation>%1: reempalme la cinta y escríbala de nuevo, o K la conserva con una nota.</translation>
    </message>
    <message>
        <source>Re-splice and type the new loss, or K keeps it with a note.</source>
        <translation>Reempalme y escriba la pérdida nueva, o K la conserva con una nota.</translation>
    </message>
    <message>
        <source>Digits correct this reading. R begins a re-splice.</source>
        <translation>Las cifras corrigen esta lectura. R empieza un reempalme.</translation>
    </message>
    <message numerus="yes">
        <source>%n noted. Enter saves them, Esc drops them.</source>
        <translation>
            <numerusform>%n anotada. Intro la guarda, Esc la borra.</numerusform>
            <numerusform>%n anotadas. Intro las guarda, Esc las borra.</numerusform>
        </translation>
    </message>
    <message>
        <source>4 is 0.04. Enter saves each fibre; or Space between them and one Enter.</source>
        <translation>4 es 0,04. Intro guarda cada fibra; o Espacio entre ellas y un solo Intro.</translation>
    </message>
    <message>
        <source>4 is 0.04, 12 is 0.12. Enter saves.</source>
        <translation>4 es 0,04, 12 es 0,12. Intro guarda.</translation>
    </message>
    <message>
        <source>Loss pad: %1</source>
        <translation>Panel de pérdidas: %1</translation>
    </message>
    <message>
        <source>Loss pad</source>
        <translation>Panel de pérdidas</translation>
    </message>
    <message>
        <source>Keep  K</source>
        <translation>Conservar  K</translation>
    </message>
    <message>
        <source>Split  T</source>
        <translation>Separar  T</translation>
    </message>
    <message>
        <source>Keep a splice over the limit, with a note</source>
        <translation>Conservar un empalme sobre el límite, con una nota</translation>
    </message>
    <message>
        <source>An attempt belongs to another fibre</source>
        <translation>Un intento es de otra fibra</translation>
    </message>
    <message>
        <source>Split attempts: one belongs to another fibre</source>
        <translation>Separar intentos: uno es de otra fibra</translation>
    </message>
    <message>
        <source>Which attempt of fibre %1 was made at which fibre?</source>
        <translation>¿Qué intento de la fibra %1 se hizo en qué fibra?</translation>
    </message>
    <message>
        <source>Attempt</source>
        <translation>Intento</translation>
    </message>
    <message>
        <source>Fibre</source>
        <translation>Fibra</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Separar</translation>
    </message>
    <message>
        <source>, time steps back</source>
        <translation>, la hora retrocede</translation>
    </message>
    <message>
        <source>Digits correct this reading; R re-splice, V void, T it was another fibre.</source>
        <translation>Las cifras corrigen esta lectura; R reempalma, V anula, T era otra fibra.</translation>
    </message>
    <message>
        <source>Edited on two laptops: choose on Logbook, F7, which one shows.</source>
        <translation>Editado en dos portátiles: elija en Bitácora, F7, cuál se ve.</translation>
    </message>
    <message>
        <source>Measured at %1 nm: %2 and %3, mean %4 dB.</source>
        <translation>Medida a %1 nm: %2 y %3, media %4 dB.</translation>
    </message>
    <message>
        <source>Measured at %1 nm one way only, %2 dB: no splice loss yet.</source>
        <translation>Medida a %1 nm en un solo sentido, %2 dB: aún no es una pérdida de empalme.</translation>
    </message>
    <message>
        <source>edited twice</source>
        <translation>editado dos veces</translation>
    </message>
    <message>
        <source>one way</source>
        <translation>un sentido</translation>
    </message>
    <message>
        <source>No closure on the table</source>
        <translation>No hay ninguna caja en la mesa</translation>
    </message>
    <message>
        <source>A splice is written down for a closure of the job. Make the first one; its label is enough. S chooses another job or closure.</source>
        <translation>Un empalme se anota en una caja de la obra. Cree la primera; basta con su etiqueta. S elige otra obra o caja.</translation>
    </message>
    <message>
        <source>Make a closure  Enter</source>
        <translation>Crear una caja  Intro</translation>
    </message>
</context>
<context>
    <name>arc::ui::MachineCard</name>
    <message>
        <source>groove %1</source>
        <translation>ranura %1</translation>
    </message>
    <message>
        <source>grooves %1</source>
        <translation>ranuras %1</translation>
    </message>
    <message>
        <source>cleaver</source>
        <translation>cortadora</translation>
    </message>
    <message>
        <source>fibre</source>
        <translation>fibra</translation>
    </message>
    <message>
        <source>electrodes</source>
        <translation>electrodos</translation>
    </message>
    <message>
        <source>calibration</source>
        <translation>calibración</translation>
    </message>
    <message>
        <source>all together</source>
        <translation>todas juntas</translation>
    </message>
    <message>
        <source>No splicer chosen</source>
        <translation>Ninguna empalmadora elegida</translation>
    </message>
    <message>
        <source>nothing known yet</source>
        <translation>aún no se sabe nada</translation>
    </message>
    <message>
        <source>Splicer %1</source>
        <translation>Empalmadora %1</translation>
    </message>
    <message>
        <source>, %1 grooves</source>
        <translation>, %1 ranuras</translation>
    </message>
    <message>
        <source>no arcs yet</source>
        <translation>aún sin arcos</translation>
    </message>
    <message>
        <source>since arc %1 (%2–%3), %4</source>
        <translation>desde el arco %1 (%2–%3), %4</translation>
    </message>
    <message>
        <source>mean of late %1 dB, baseline %2</source>
        <translation>media reciente %1 dB, línea base %2</translation>
    </message>
    <message>
        <source>%1 of about %2 arcs</source>
        <translation>%1 de aprox. %2 arcos</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>≥ %1</translation>
    </message>
    <message>
        <source>grooves cleaned</source>
        <translation>ranuras limpias</translation>
    </message>
    <message>
        <source>not known, over %1 arcs</source>
        <translation>no se sabe, más de %1 arcos</translation>
    </message>
    <message>
        <source>%1 arcs ago</source>
        <translation>hace %1 arcos</translation>
    </message>
    <message>
        <source>arc calibration</source>
        <translation>calibración de arco</translation>
    </message>
    <message>
        <source>owed</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>looking…</source>
        <translation>mirando…</translation>
    </message>
    <message>
        <source>Arcs in this mode: %1; the charts judge from 60 on</source>
        <translation>Arcos en este modo: %1; los gráficos juzgan desde 60</translation>
    </message>
</context>
<context>
    <name>arc::ui::MainWindow</name>
    <message>
        <source>%1 - Arcwright</source>
        <translation>%1 - Arcwright</translation>
    </message>
    <message>
        <source>Making the demo logbook</source>
        <translation>Creando la bitácora de ejemplo</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Ir a %1</translation>
    </message>
    <message>
        <source>Help and keys</source>
        <translation>Ayuda y teclas</translation>
    </message>
    <message>
        <source>Find an action, a tool, a job</source>
        <translation>Buscar una acción, una herramienta, una obra</translation>
    </message>
    <message>
        <source>Undo the last entry</source>
        <translation>Deshacer la última entrada</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Change between Day and Night</source>
        <translation>Cambiar entre Día y Noche</translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation>Texto más grande</translation>
    </message>
    <message>
        <source>Smaller text</source>
        <translation>Texto más pequeño</translation>
    </message>
    <message>
        <source>Open the demo crew in a window of its own</source>
        <translation>Abrir la cuadrilla de ejemplo en otra ventana</translation>
    </message>
    <message>
        <source>Say who is at the keyboard</source>
        <translation>Decir quién está al teclado</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Rehacer: %1</translation>
    </message>
    <message>
        <source>saved %1:%2:%3</source>
        <translation>guardado %1:%2:%3</translation>
    </message>
    <message>
        <source>Who is at the keyboard?</source>
        <translation>¿Quién está al teclado?</translation>
    </message>
    <message>
        <source>Your crew label. It is written beside every entry you make.</source>
        <translation>Su nombre en la cuadrilla. Se escribe junto a cada entrada que haga.</translation>
    </message>
    <message>
        <source>Change the language</source>
        <translation>Cambiar el idioma</translation>
    </message>
    <message>
        <source>what is typed would be lost</source>
        <translation>se perdería lo que ha escrito</translation>
    </message>
    <message>
        <source>Finish it or clear it, then change the language</source>
        <translation>Termínelo o bórrelo y cambie después el idioma</translation>
    </message>
    <message>
        <source>Help: %1</source>
        <translation>Ayuda: %1</translation>
    </message>
    <message>
        <source>History of what is chosen: who wrote what, when, from where</source>
        <translation>Historia de lo elegido: quién escribió qué, cuándo y desde dónde</translation>
    </message>
    <message>
        <source>Photos and notes of what is chosen</source>
        <translation>Fotos y notas de lo elegido</translation>
    </message>
    <message>
        <source>What would it lose? Offset, tilt, mode fields</source>
        <translation>¿Cuánto perdería? Desplazamiento, inclinación, campos modales</translation>
    </message>
    <message>
        <source>Finish it or clear it, then change the look</source>
        <translation>Termínelo o bórrelo y cambie después el aspecto</translation>
    </message>
</context>
<context>
    <name>arc::ui::MendSheet</name>
    <message>
        <source>Rows set aside</source>
        <translation>Filas apartadas</translation>
    </message>
    <message>
        <source>Take in the mended rows  Ctrl+Enter</source>
        <translation>Importar las filas corregidas  Ctrl+Intro</translation>
    </message>
    <message>
        <source>Leave this row out  Del</source>
        <translation>Descartar esta fila  Supr</translation>
    </message>
    <message>
        <source>Set aside: nothing of these is lost. Choose a row and press Enter to mend it.</source>
        <translation>Apartadas: no se pierde nada. Elija una fila y pulse Intro para corregirla.</translation>
    </message>
    <message>
        <source>Set aside: nothing of these is lost, mend them and import again</source>
        <translation>Apartadas: no se pierde nada, corríjalas e importe de nuevo</translation>
    </message>
    <message>
        <source>mended; the logbook has it already</source>
        <translation>corregida; el libro ya la tiene</translation>
    </message>
    <message>
        <source>mended, will be taken in</source>
        <translation>corregida, se importará</translation>
    </message>
    <message>
        <source>%1, line %2. Enter goes on, Esc leaves the row as it is.</source>
        <translation>%1, línea %2. Intro sigue, Esc deja la fila como está.</translation>
    </message>
    <message>
        <source>the whole row</source>
        <translation>la fila entera</translation>
    </message>
    <message>
        <source>The logbook has this splice already.</source>
        <translation>El libro ya tiene este empalme.</translation>
    </message>
    <message>
        <source>This row lands.</source>
        <translation>Esta fila entra.</translation>
    </message>
    <message>
        <source>No row is mended yet: choose one and press Enter</source>
        <translation>Aún no hay filas corregidas: elija una y pulse Intro</translation>
    </message>
    <message>
        <source>%1 are mended and not taken in yet.</source>
        <translation>%1 están corregidas y aún no importadas.</translation>
    </message>
</context>
<context>
    <name>arc::ui::OrdersAside</name>
    <message>
        <source>To order</source>
        <translation>Por pedir</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Copiar la lista</translation>
    </message>
    <message>
        <source>; needed by %1</source>
        <translation>; necesario para el %1</translation>
    </message>
</context>
<context>
    <name>arc::ui::OtherCare</name>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>Tool</source>
        <translation>Herramienta</translation>
    </message>
    <message>
        <source>Care card</source>
        <translation>Ficha de cuidado</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>Start this care</source>
        <translation>Empezar este cuidado</translation>
    </message>
    <message>
        <source>Edit card…</source>
        <translation>Editar ficha…</translation>
    </message>
    <message>
        <source>Limits…</source>
        <translation>Límites…</translation>
    </message>
    <message>
        <source>Limits of care</source>
        <translation>Límites de cuidado</translation>
    </message>
</context>
<context>
    <name>arc::ui::PackPanel</name>
    <message>
        <source>A satchel is one signed file for another logbook: by stick, by mail, any way you like. Packing the same again, or more than needed, does no harm.</source>
        <translation>Una valija es un archivo firmado para otra bitácora: en memoria USB, por correo, como quiera. Empaquetar lo mismo otra vez, o más de lo necesario, no hace daño.</translation>
    </message>
    <message>
        <source>What is handed over</source>
        <translation>Qué se entrega</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>what was written since a day</source>
        <translation>lo escrito desde un día</translation>
    </message>
    <message>
        <source>one job</source>
        <translation>una obra</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Frase de paso</translation>
    </message>
    <message>
        <source>none: who has the file can read it</source>
        <translation>ninguna: quien tenga el archivo puede leerlo</translation>
    </message>
    <message>
        <source>Passphrase once more</source>
        <translation>La frase de paso otra vez</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Once more</source>
        <translation>Otra vez</translation>
    </message>
    <message>
        <source>Write the satchel…</source>
        <translation>Escribir la valija…</translation>
    </message>
    <message>
        <source>The two passphrases are not the same. Type it once more.</source>
        <translation>Las dos frases de paso no son iguales. Escríbala otra vez.</translation>
    </message>
    <message>
        <source>There is no job in this logbook yet.</source>
        <translation>Aún no hay obra en esta bitácora.</translation>
    </message>
    <message>
        <source>Folder for the satchel</source>
        <translation>Carpeta para la valija</translation>
    </message>
    <message>
        <source>Packing…</source>
        <translation>Empaquetando…</translation>
    </message>
    <message>
        <source>Packing a satchel</source>
        <translation>Empaquetando una valija</translation>
    </message>
    <message>
        <source>%1 entries are in %2, signed by this laptop%3.</source>
        <translation>%1 entradas están en %2, firmadas por este portátil%3.</translation>
    </message>
    <message>
        <source> and sealed. Tell the passphrase another way than the file</source>
        <translation> y selladas. Diga la frase de paso por otro camino que el archivo</translation>
    </message>
</context>
<context>
    <name>arc::ui::PadRow</name>
    <message>
        <source>fibre %1 %2</source>
        <translation>fibra %1 %2</translation>
    </message>
    <message>
        <source> dB</source>
        <translation> dB</translation>
    </message>
    <message>
        <source>attempt %1</source>
        <translation>intento %1</translation>
    </message>
</context>
<context>
    <name>arc::ui::PadRows</name>
    <message>
        <source>%1–%2 of %3</source>
        <translation>%1 de %3 {1–%2 ?}</translation>
    </message>
</context>
<context>
    <name>arc::ui::PausedRuns</name>
    <message>
        <source>, step %1 of %2</source>
        <translation>, paso %1 de %2</translation>
    </message>
    <message>
        <source>Paused: %1. Begun %2 by %3.</source>
        <translation>En pausa: %1. Empezado %2 por %3.</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>alguien</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>Seguir con ello</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Abandonar</translation>
    </message>
</context>
<context>
    <name>arc::ui::PreviewTable</name>
    <message>
        <source>not read yet</source>
        <translation>aún sin leer</translation>
    </message>
    <message>
        <source>lands</source>
        <translation>entra</translation>
    </message>
    <message>
        <source>set aside: %1</source>
        <translation>apartada: %1</translation>
    </message>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>what comes of it</source>
        <translation>qué pasa con ella</translation>
    </message>
</context>
<context>
    <name>arc::ui::ProblemBar</name>
    <message>
        <source>Put away</source>
        <translation>Quitar</translation>
    </message>
</context>
<context>
    <name>arc::ui::PromptBar</name>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>↑ ↓ usual answers</source>
        <translation>↑ ↓ respuestas usuales</translation>
    </message>
    <message>
        <source>%1 is needed.</source>
        <translation>Falta: %1.</translation>
    </message>
</context>
<context>
    <name>arc::ui::QueueList</name>
    <message>
        <source>Nothing is due. The queues fill from counts, days, the air around and the charts.</source>
        <translation>No toca nada. Las colas se llenan por conteos, días, el ambiente y los gráficos.</translation>
    </message>
</context>
<context>
    <name>arc::ui::QueueRow</name>
    <message>
        <source>Hold</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Next gap</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Shift end</source>
        <translation>Fin de turno</translation>
    </message>
    <message>
        <source>Bench day</source>
        <translation>Día de taller</translation>
    </message>
    <message>
        <source>+%1</source>
        <translation>+%1</translation>
    </message>
    <message>
        <source>nothing holds this crew</source>
        <translation>nada detiene a esta cuadrilla</translation>
    </message>
    <message>
        <source>nothing is due</source>
        <translation>no toca nada</translation>
    </message>
    <message>
        <source>looking…</source>
        <translation>mirando…</translation>
    </message>
</context>
<context>
    <name>arc::ui::Rail</name>
    <message>
        <source>Screens</source>
        <translation>Pantallas</translation>
    </message>
    <message>
        <source>Help  F1</source>
        <translation>Ayuda  F1</translation>
    </message>
    <message>
        <source>Help and keys</source>
        <translation>Ayuda y teclas</translation>
    </message>
    <message>
        <source>Last entry on disk</source>
        <translation>Última entrada en disco</translation>
    </message>
    <message>
        <source>nothing written yet</source>
        <translation>aún nada escrito</translation>
    </message>
    <message>
        <source>Sign on</source>
        <translation>Identificarse</translation>
    </message>
    <message>
        <source>Say who is at the keyboard</source>
        <translation>Decir quién está al teclado</translation>
    </message>
    <message>
        <source>At the keyboard: %1</source>
        <translation>Al teclado: %1</translation>
    </message>
</context>
<context>
    <name>arc::ui::RailButton</name>
    <message>
        <source>key %1</source>
        <translation>tecla %1</translation>
    </message>
</context>
<context>
    <name>arc::ui::ReadingsModel</name>
    <message>
        <source>arc</source>
        <translation>arco</translation>
    </message>
    <message>
        <source>when</source>
        <translation>cuándo</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation>intento</translation>
    </message>
    <message>
        <source>worst angle</source>
        <translation>peor ángulo</translation>
    </message>
    <message>
        <source>job</source>
        <translation>obra</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>loss dB</source>
        <translation>pérdida dB</translation>
    </message>
    <message>
        <source>groove %1</source>
        <translation>ranura %1</translation>
    </message>
    <message>
        <source>owed</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>calibration</source>
        <translation>calibración</translation>
    </message>
</context>
<context>
    <name>arc::ui::ReadingsTable</name>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Losses as the splicer estimated them, in dB; one row is one arc.</source>
        <translation>Pérdidas como las estimó la empalmadora, en dB; una fila es un arco.</translation>
    </message>
    <message>
        <source>Copy as CSV</source>
        <translation>Copiar como CSV</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>arc::ui::RecordBar</name>
    <message>
        <source>Issue the final record…</source>
        <translation>Emitir el acta final…</translation>
    </message>
    <message>
        <source>Write a draft…</source>
        <translation>Escribir un borrador…</translation>
    </message>
    <message>
        <source>Verify a record…</source>
        <translation>Verificar un acta…</translation>
    </message>
    <message>
        <source>Write a draft of the closeout record</source>
        <translation>Escribir un borrador del acta de cierre</translation>
    </message>
    <message>
        <source>Issue the final closeout record</source>
        <translation>Emitir el acta de cierre final</translation>
    </message>
    <message>
        <source>Verify a closeout record</source>
        <translation>Verificar un acta de cierre</translation>
    </message>
    <message>
        <source>Every exception needs a disposition first</source>
        <translation>Cada excepción necesita antes una resolución</translation>
    </message>
    <message>
        <source>Every exception needs a disposition first: choose it, then A or X.</source>
        <translation>Cada excepción necesita antes una resolución: elíjala y pulse A o X.</translation>
    </message>
    <message>
        <source>A final record carries the name of who issues it.</source>
        <translation>Un acta final lleva el nombre de quien la emite.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Folder in which the record is made</source>
        <translation>Carpeta en la que se hace el acta</translation>
    </message>
    <message>
        <source>Writing the record…</source>
        <translation>Escribiendo el acta…</translation>
    </message>
    <message>
        <source>Issuing the closeout record</source>
        <translation>Emitiendo el acta de cierre</translation>
    </message>
    <message>
        <source>Writing the draft</source>
        <translation>Escribiendo el borrador</translation>
    </message>
    <message>
        <source>Written: %1. A stranger can verify it.</source>
        <translation>Escrita: %1. Un extraño puede verificarla.</translation>
    </message>
    <message>
        <source>Closeout record to verify</source>
        <translation>Acta de cierre por verificar</translation>
    </message>
    <message>
        <source>Verifying…</source>
        <translation>Verificando…</translation>
    </message>
    <message>
        <source>Verifying</source>
        <translation>Verificando</translation>
    </message>
    <message>
        <source>Paper of the record</source>
        <translation>Papel del acta</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>papel</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Language of the pages</source>
        <translation>Idioma de las páginas</translation>
    </message>
</context>
<context>
    <name>arc::ui::Session</name>
    <message>
        <source>Looking at the losses</source>
        <translation>Mirando las pérdidas</translation>
    </message>
</context>
<context>
    <name>arc::ui::SetAsideTable</name>
    <message>
        <source>file</source>
        <translation>archivo</translation>
    </message>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>column</source>
        <translation>columna</translation>
    </message>
    <message>
        <source>why it was set aside</source>
        <translation>por qué se apartó</translation>
    </message>
    <message>
        <source>the row</source>
        <translation>la fila</translation>
    </message>
</context>
<context>
    <name>arc::ui::SetUpPanel</name>
    <message>
        <source>Set up once; it stays until you change it</source>
        <translation>Se prepara una vez y queda hasta que lo cambie</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Closure</source>
        <translation>Caja</translation>
    </message>
    <message>
        <source>Who splices</source>
        <translation>Quién empalma</translation>
    </message>
    <message>
        <source>Splicer</source>
        <translation>Empalmadora</translation>
    </message>
    <message>
        <source>Fibres per arc</source>
        <translation>Fibras por arco</translation>
    </message>
    <message>
        <source>Splice mode</source>
        <translation>Modo de empalme</translation>
    </message>
    <message>
        <source>Cleaver</source>
        <translation>Cortadora</translation>
    </message>
    <message>
        <source>Temperature, °C</source>
        <translation>Temperatura, °C</translation>
    </message>
    <message>
        <source>Humidity, %</source>
        <translation>Humedad, %</translation>
    </message>
    <message>
        <source>Air pressure, hPa</source>
        <translation>Presión del aire, hPa</translation>
    </message>
    <message>
        <source>Splice with this  Ctrl+Enter</source>
        <translation>Empalmar con esto  Ctrl+Intro</translation>
    </message>
    <message>
        <source>Leave as it was  Esc</source>
        <translation>Dejar como estaba  Esc</translation>
    </message>
    <message>
        <source>New job, cable or closure…</source>
        <translation>Obra, cable o caja nuevos…</translation>
    </message>
    <message>
        <source>unassigned</source>
        <translation>sin asignar</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>%1, %2 splices</source>
        <translation>%1, %2 empalmes</translation>
    </message>
    <message>
        <source>1, single</source>
        <translation>1, única</translation>
    </message>
    <message>
        <source>%1, ribbon</source>
        <translation>%1, cinta</translation>
    </message>
    <message>
        <source>%1 °C warmer than last written down</source>
        <translation>%1 °C más que lo anotado por última vez</translation>
    </message>
    <message>
        <source>%1 °C colder than last written down</source>
        <translation>%1 °C menos que lo anotado por última vez</translation>
    </message>
    <message>
        <source>air pressure changed by %1 hPa</source>
        <translation>la presión del aire cambió en %1 hPa</translation>
    </message>
    <message>
        <source>the arc of %1 was calibrated for %2</source>
        <translation>el arco de %1 se calibró para %2</translation>
    </message>
    <message>
        <source>%1: an arc calibration will be owed.</source>
        <translation>%1: quedará pendiente una calibración del arco.</translation>
    </message>
</context>
<context>
    <name>arc::ui::SignalCard</name>
    <message>
        <source>began %1, %2%3</source>
        <translation>empezó en el %1, %2%3</translation>
    </message>
    <message>
        <source>signal at arc %1, %2 later</source>
        <translation>señal en el arco %1, %2 después</translation>
    </message>
    <message>
        <source>%1&#xa0;dB since then, seen by the chart of %2</source>
        <translation>%1&#xa0;dB desde entonces, según el gráfico de %2</translation>
    </message>
    <message>
        <source>reason: %1</source>
        <translation>motivo: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>arc::ui::SignalPanel</name>
    <message>
        <source>Signals</source>
        <translation>Señales</translation>
    </message>
    <message>
        <source>Dismiss, with a reason…</source>
        <translation>Descartar…</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Retomarla</translation>
    </message>
    <message>
        <source>Readings  R</source>
        <translation>Lecturas  R</translation>
    </message>
    <message>
        <source>Start: %1</source>
        <translation>Empezar: %1</translation>
    </message>
    <message>
        <source>%1 arcs so far. From %2 on there is a baseline to compare with, and the charts can speak.</source>
        <translation>%1 arcos hasta ahora. Desde %2 hay una línea base con que comparar y los gráficos pueden hablar.</translation>
    </message>
    <message>
        <source>A chart is filling up but has not reached its limit. Nothing has to stop.</source>
        <translation>Un gráfico se va llenando, pero no ha llegado a su límite. No hay que parar nada.</translation>
    </message>
    <message>
        <source>No chart has signalled. Losses now %1, baseline %2.</source>
        <translation>Ningún gráfico dio señal. Pérdidas ahora %1, línea base %2.</translation>
    </message>
    <message>
        <source>All signals, N and P go through them</source>
        <translation>Todas las señales; N y P las recorren</translation>
    </message>
    <message>
        <source>Did the care help?</source>
        <translation>¿Ayudó el cuidado?</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>%1 since</source>
        <translation>%1 desde entonces</translation>
    </message>
    <message>
        <source>%1 dB (%2 … %3), %4 arcs before, %5 after</source>
        <translation>%1 dB (%2 … %3), %4 arcos antes, %5 después</translation>
    </message>
    <message>
        <source>electrodes</source>
        <translation>electrodos</translation>
    </message>
    <message>
        <source>%1 arcs</source>
        <translation>%1 arcos</translation>
    </message>
    <message>
        <source>about %1 arcs left (%2–%3, 80 %)</source>
        <translation>quedan unos %1 arcos (%2–%3, 80 %)</translation>
    </message>
    <message>
        <source>too early for a forecast</source>
        <translation>demasiado pronto para un pronóstico</translation>
    </message>
    <message>
        <source>plain rule of about 5,000 arcs: %1 left</source>
        <translation>regla simple de unos 5.000 arcos: quedan %1</translation>
    </message>
</context>
<context>
    <name>arc::ui::SpanSheet</name>
    <message>
        <source>Spans and closures</source>
        <translation>Tramos y cajas</translation>
    </message>
    <message>
        <source>What the link budget assumes</source>
        <translation>Lo que supone el presupuesto del enlace</translation>
    </message>
    <message>
        <source>Span</source>
        <translation>Tramo</translation>
    </message>
    <message>
        <source>Span label</source>
        <translation>Etiqueta del tramo</translation>
    </message>
    <message>
        <source>Begins at</source>
        <translation>Empieza en</translation>
    </message>
    <message>
        <source>Ends at</source>
        <translation>Termina en</translation>
    </message>
    <message>
        <source>Cable</source>
        <translation>Cable</translation>
    </message>
    <message>
        <source>Length, km</source>
        <translation>Longitud, km</translation>
    </message>
    <message>
        <source>Closures on it</source>
        <translation>Cajas en él</translation>
    </message>
    <message>
        <source>a closure, or a name as rack 2</source>
        <translation>una caja, o un nombre como bastidor 2</translation>
    </message>
    <message>
        <source>empty: that of the cable</source>
        <translation>vacío: la del cable</translation>
    </message>
    <message>
        <source>HR-01 to HR-05, HR-07</source>
        <translation>HR-01 to HR-05, HR-07</translation>
    </message>
    <message>
        <source>Save the span  Ctrl+Enter</source>
        <translation>Guardar el tramo  Ctrl+Intro</translation>
    </message>
    <message>
        <source>Take it back  Ctrl+Del</source>
        <translation>Retirarlo  Ctrl+Supr</translation>
    </message>
    <message>
        <source>Spans from CSV…  Ctrl+O</source>
        <translation>Tramos desde CSV…  Ctrl+O</translation>
    </message>
    <message>
        <source>Leave  Esc</source>
        <translation>Salir  Esc</translation>
    </message>
    <message>
        <source>a new span</source>
        <translation>un tramo nuevo</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>cambiar %1</translation>
    </message>
    <message>
        <source>none, or several</source>
        <translation>ninguno, o varios</translation>
    </message>
    <message>
        <source>Spans of the job</source>
        <translation>Tramos de la obra</translation>
    </message>
    <message>
        <source>%1 closures: %2</source>
        <translation>%1 cajas: %2</translation>
    </message>
    <message>
        <source>a connector at %1</source>
        <translation>un conector en %1</translation>
    </message>
    <message>
        <source> and at </source>
        <translation> y en </translation>
    </message>
    <message>
        <source>Nothing is changed.</source>
        <translation>No ha cambiado nada.</translation>
    </message>
    <message>
        <source>span %1 of job %2</source>
        <translation>tramo %1 de la obra %2</translation>
    </message>
    <message>
        <source>Span %1 is saved.</source>
        <translation>El tramo %1 está guardado.</translation>
    </message>
    <message>
        <source>Choose a span first.</source>
        <translation>Elija antes un tramo.</translation>
    </message>
    <message>
        <source>span %1 taken back</source>
        <translation>tramo %1 retirado</translation>
    </message>
    <message>
        <source>Span %1 is taken back; its closures are as they were.</source>
        <translation>El tramo %1 está retirado; sus cajas siguen como estaban.</translation>
    </message>
    <message>
        <source>Spans with the columns span, from, to, cable, length_km, closures</source>
        <translation>Tramos con las columnas span, from, to, cable, length_km, closures</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation>Tablas (*.csv *.txt *.tsv)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>All spans of the table are here already.</source>
        <translation>Todos los tramos de la tabla ya están aquí.</translation>
    </message>
    <message>
        <source>%1 spans of job %2</source>
        <translation>%1 tramos de la obra %2</translation>
    </message>
    <message>
        <source>%1 spans are saved.</source>
        <translation>%1 tramos están guardados.</translation>
    </message>
</context>
<context>
    <name>arc::ui::SpanTable</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>over</source>
        <translation>por encima</translation>
    </message>
    <message>
        <source>%1 nm: %2 measured both ways, %3 estimated</source>
        <translation>%1 nm: %2 medidos en ambos sentidos, %3 estimados</translation>
    </message>
    <message>
        <source>estimated only</source>
        <translation>solo estimado</translation>
    </message>
    <message>
        <source>the whole job, one span</source>
        <translation>toda la obra, un tramo</translation>
    </message>
    <message>
        <source>on no span</source>
        <translation>en ningún tramo</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>No closure</source>
        <translation>Sin caja</translation>
    </message>
    <message>
        <source>%1 to re-splice</source>
        <translation>%1 por reempalmar</translation>
    </message>
    <message>
        <source>%1 both ways</source>
        <translation>%1 en ambos sentidos</translation>
    </message>
    <message>
        <source>%1 one way</source>
        <translation>%1 en un sentido</translation>
    </message>
    <message>
        <source>budget %1 nm, dB</source>
        <translation>presupuesto %1 nm, dB</translation>
    </message>
    <message>
        <source>budget, dB</source>
        <translation>presupuesto, dB</translation>
    </message>
    <message>
        <source>span and closures</source>
        <translation>tramo y cajas</translation>
    </message>
    <message>
        <source>from, to</source>
        <translation>de, a</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>spliced</source>
        <translation>empalmado</translation>
    </message>
    <message>
        <source>average, dB</source>
        <translation>media, dB</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
</context>
<context>
    <name>arc::ui::SpliceSearch</name>
    <message>
        <source>fibre, note or person</source>
        <translation>fibra, nota o persona</translation>
    </message>
    <message>
        <source>Search words</source>
        <translation>Palabras de búsqueda</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>any time</source>
        <translation>cualquier fecha</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>Pérdida</translation>
    </message>
    <message>
        <source>any loss</source>
        <translation>cualquier pérdida</translation>
    </message>
    <message>
        <source>above %1 dB</source>
        <translation>sobre %1 dB</translation>
    </message>
    <message>
        <source>Back  Esc</source>
        <translation>Atrás  Esc</translation>
    </message>
    <message>
        <source>Splices</source>
        <translation>Empalmes</translation>
    </message>
    <message>
        <source>History of the chosen splice</source>
        <translation>Historia del empalme elegido</translation>
    </message>
    <message>
        <source>%1 splices</source>
        <translation>%1 empalmes</translation>
    </message>
    <message>
        <source>%1 splices and more below</source>
        <translation>%1 empalmes y más abajo</translation>
    </message>
    <message>
        <source>any job</source>
        <translation>cualquier obra</translation>
    </message>
    <message>
        <source>No splice fits. Take a filter away.</source>
        <translation>Ningún empalme encaja. Quite un filtro.</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>History: %1</source>
        <translation>Historia: %1</translation>
    </message>
    <message>
        <source>Tool</source>
        <translation>Herramienta</translation>
    </message>
    <message>
        <source>not accepted</source>
        <translation>no aceptada</translation>
    </message>
    <message>
        <source>Closure %1</source>
        <translation>Caja %1</translation>
    </message>
    <message>
        <source>fibre %1, %2</source>
        <translation>fibra %1, %2</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>any verdict</source>
        <translation>cualquier veredicto</translation>
    </message>
    <message>
        <source>7 d, a day as 2031-03-03, a month as 2031-03, or 2031-03-03 to 2031-03-15</source>
        <translation>7 d, un día como 2031-03-03, un mes como 2031-03, o 2031-03-03 to 2031-03-15</translation>
    </message>
    <message>
        <source>any tool</source>
        <translation>cualquier herramienta</translation>
    </message>
    <message>
        <source>Searching…</source>
        <translation>Buscando…</translation>
    </message>
    <message>
        <source>Splice of fibre %1, %2 dB, %3</source>
        <translation>Empalme de la fibra %1, %2 dB, %3</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>newest first</source>
        <translation>lo más nuevo primero</translation>
    </message>
    <message>
        <source>oldest first</source>
        <translation>lo más antiguo primero</translation>
    </message>
</context>
<context>
    <name>arc::ui::SpliceTable</name>
    <message>
        <source>unassigned</source>
        <translation>sin asignar</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corregida</translation>
    </message>
    <message>
        <source>time</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>job and closure</source>
        <translation>obra y caja</translation>
    </message>
    <message>
        <source>fibre</source>
        <translation>fibra</translation>
    </message>
    <message>
        <source>loss dB</source>
        <translation>pérdida dB</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation>intento</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>veredicto</translation>
    </message>
    <message>
        <source>splicer</source>
        <translation>empalmadora</translation>
    </message>
    <message>
        <source>groove</source>
        <translation>ranura</translation>
    </message>
    <message>
        <source>who</source>
        <translation>quién</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>accept</source>
        <translation>aceptar</translation>
    </message>
    <message>
        <source>accept, high</source>
        <translation>aceptar, alto</translation>
    </message>
    <message>
        <source>re-splice</source>
        <translation>reempalmar</translation>
    </message>
    <message>
        <source>high, note missing</source>
        <translation>alto, falta la nota</translation>
    </message>
    <message>
        <source>kept, noted</source>
        <translation>conservado, con nota</translation>
    </message>
    <message>
        <source>over ceiling</source>
        <translation>sobre el techo</translation>
    </message>
    <message>
        <source>voided</source>
        <translation>anulado</translation>
    </message>
    <message>
        <source>Searching the splices</source>
        <translation>Buscando en los empalmes</translation>
    </message>
</context>
<context>
    <name>arc::ui::SplicerChips</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Splicer</source>
        <translation>Empalmadora</translation>
    </message>
    <message>
        <source>Mode and fibres an arc</source>
        <translation>Modo y fibras por arco</translation>
    </message>
</context>
<context>
    <name>arc::ui::SummaryCard</name>
    <message>
        <source>accepted, with exceptions</source>
        <translation>aceptada, con excepciones</translation>
    </message>
    <message>
        <source>exceptions wait</source>
        <translation>hay excepciones en espera</translation>
    </message>
    <message>
        <source>not accepted</source>
        <translation>no aceptada</translation>
    </message>
    <message>
        <source>spliced</source>
        <translation>empalmado</translation>
    </message>
    <message>
        <source>mean dB</source>
        <translation>media dB</translation>
    </message>
    <message>
        <source>median dB</source>
        <translation>mediana dB</translation>
    </message>
    <message>
        <source>worst dB</source>
        <translation>peor dB</translation>
    </message>
    <message>
        <source>first time</source>
        <translation>a la primera</translation>
    </message>
    <message>
        <source>limit %1 dB, average %2, ceiling %3</source>
        <translation>límite %1 dB, media %2, techo %3</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptada</translation>
    </message>
    <message>
        <source>Link budget</source>
        <translation>Presupuesto del enlace</translation>
    </message>
    <message>
        <source>%1 nm %2 of %3 dB</source>
        <translation>%1 nm %2 de %3 dB</translation>
    </message>
    <message>
        <source>Link budget, as spliced of allowed: %1</source>
        <translation>Presupuesto del enlace, empalmado de permitido: %1</translation>
    </message>
    <message>
        <source>Link budget of span %1, as spliced of allowed: %2</source>
        <translation>Presupuesto del tramo %1, empalmado de permitido: %2</translation>
    </message>
</context>
<context>
    <name>arc::ui::TakeInPanel</name>
    <message>
        <source>%1, key %2, packed %3</source>
        <translation>%1, clave %2, empaquetada %3</translation>
    </message>
    <message>
        <source>, sealed</source>
        <translation>, sellada</translation>
    </message>
    <message>
        <source>All of a satchel is taken in or nothing, in any order, any number of times: what is here already is not doubled.</source>
        <translation>De una valija se toma todo o nada, en cualquier orden, cuantas veces sea: lo que ya está aquí no se duplica.</translation>
    </message>
    <message>
        <source>Choose a satchel…</source>
        <translation>Elegir una valija…</translation>
    </message>
    <message>
        <source>Passphrase of the satchel</source>
        <translation>Frase de paso de la valija</translation>
    </message>
    <message>
        <source>passphrase, if it has one</source>
        <translation>frase de paso, si la tiene</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Tomarla</translation>
    </message>
    <message>
        <source>Satchels of laptops nobody has accepted yet</source>
        <translation>Valijas de portátiles que nadie ha aceptado aún</translation>
    </message>
    <message>
        <source>They lie beside the logbook; nothing of them is in it. Compare the key with the one that the other laptop shows under Laptops, by phone, then accept it.</source>
        <translation>Están junto a la bitácora; nada de ellas está dentro. Compare por teléfono la clave con la que el otro portátil muestra en Portátiles y después acéptelo.</translation>
    </message>
    <message>
        <source>Waiting satchels</source>
        <translation>Valijas en espera</translation>
    </message>
    <message>
        <source>Accept the laptop  A</source>
        <translation>Aceptar el portátil  A</translation>
    </message>
    <message>
        <source>Throw the satchel away  X</source>
        <translation>Tirar la valija  X</translation>
    </message>
    <message>
        <source>Accept the laptop of the chosen satchel</source>
        <translation>Aceptar el portátil de la valija elegida</translation>
    </message>
    <message>
        <source>Throw the chosen waiting satchel away</source>
        <translation>Tirar la valija en espera elegida</translation>
    </message>
    <message>
        <source>Satchel to take in</source>
        <translation>Valija por tomar</translation>
    </message>
    <message>
        <source>Satchels (*.satchel)</source>
        <translation>Valijas (*.satchel)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Reading what it says…</source>
        <translation>Leyendo lo que dice…</translation>
    </message>
    <message>
        <source>Reading a satchel</source>
        <translation>Leyendo una valija</translation>
    </message>
    <message>
        <source>Taking it in…</source>
        <translation>Tomándola…</translation>
    </message>
    <message>
        <source>Taking in a satchel</source>
        <translation>Tomando una valija</translation>
    </message>
    <message>
        <source>Nobody has accepted the laptop that signed it (%1, key %2): the satchel waits below, and nothing of it is in the logbook.</source>
        <translation>Nadie ha aceptado el portátil que la firmó (%1, clave %2): la valija espera abajo y nada de ella está en la bitácora.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Does the other laptop show the key %1? Then give it a name; its satchels are taken in from now on.</source>
        <translation>¿Muestra el otro portátil la clave %1? Entonces dele un nombre; desde ahora se toman sus valijas.</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Aceptar</translation>
    </message>
    <message>
        <source>Press X once more to throw %1 away.</source>
        <translation>Pulse X otra vez para tirar %1.</translation>
    </message>
    <message>
        <source>The satchel was thrown away; nothing of it was in the logbook.</source>
        <translation>La valija se tiró; nada de ella estaba en la bitácora.</translation>
    </message>
    <message>
        <source>New entries from %2: %1; here already: %3.</source>
        <translation>Entradas nuevas de %2: %1; ya estaban aquí: %3.</translation>
    </message>
    <message>
        <source>Records edited here and there: %1; look at them under Edited twice.</source>
        <translation>Registros editados aquí y allá: %1; mírelos en Editado dos veces.</translation>
    </message>
</context>
<context>
    <name>arc::ui::Timeline</name>
    <message>
        <source>History</source>
        <translation>Historia</translation>
    </message>
</context>
<context>
    <name>arc::ui::TodayPage</name>
    <message>
        <source>last ribbon of the closure</source>
        <translation>última cinta de la caja</translation>
    </message>
    <message>
        <source>the client waits, looked at by the supervisor</source>
        <translation>el cliente espera, revisado por el supervisor</translation>
    </message>
    <message>
        <source>done, not yet written down</source>
        <translation>hecho, aún sin anotar</translation>
    </message>
    <message>
        <source>Set-up  S</source>
        <translation>Preparación  S</translation>
    </message>
    <message>
        <source>Import  I</source>
        <translation>Importar  I</translation>
    </message>
    <message>
        <source>All splices  /</source>
        <translation>Todos los empalmes  /</translation>
    </message>
    <message>
        <source>Nothing to splice yet</source>
        <translation>Aún no hay nada que empalmar</translation>
    </message>
    <message>
        <source>A job tells which fibres meet in which closure and what loss its contract accepts. Make one, or import a splice log that a splicer exported.</source>
        <translation>Una obra dice qué fibras se unen en qué caja y qué pérdida acepta su contrato. Cree una, o importe un registro de empalmes que exportó una empalmadora.</translation>
    </message>
    <message>
        <source>Put the splicers into the kit</source>
        <translation>Poner las empalmadoras en el equipo</translation>
    </message>
    <message>
        <source>Make a job</source>
        <translation>Crear una obra</translation>
    </message>
    <message>
        <source>Import a splice log</source>
        <translation>Importar un registro de empalmes</translation>
    </message>
    <message>
        <source>Start the care</source>
        <translation>Empezar el cuidado</translation>
    </message>
    <message>
        <source>Queues</source>
        <translation>Colas</translation>
    </message>
    <message>
        <source>Set up: splicer, job, closure, mode</source>
        <translation>Preparar: empalmadora, obra, caja, modo</translation>
    </message>
    <message>
        <source>Import a splice log, events or measured losses</source>
        <translation>Importar empalmes, cuidados o pérdidas medidas</translation>
    </message>
    <message>
        <source>Search all splices</source>
        <translation>Buscar en todos los empalmes</translation>
    </message>
    <message>
        <source>Make a job, a cable or a closure</source>
        <translation>Crear una obra, un cable o una caja</translation>
    </message>
    <message>
        <source>Average of the job</source>
        <translation>Media de la obra</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Closure %1</source>
        <translation>Caja %1</translation>
    </message>
    <message>
        <source>tray %1</source>
        <translation>bandeja %1</translation>
    </message>
    <message>
        <source>ribbon %1</source>
        <translation>cinta %1</translation>
    </message>
    <message>
        <source>tube %1</source>
        <translation>tubo %1</translation>
    </message>
    <message>
        <source>No closure chosen</source>
        <translation>Ninguna caja elegida</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Obra %1</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation>obra %1</translation>
    </message>
    <message>
        <source>%1 fibres, %2 done</source>
        <translation>%1 fibras, %2 hechas</translation>
    </message>
    <message numerus="yes">
        <source>%n to re-splice</source>
        <translation>
            <numerusform>%n por reempalmar</numerusform>
            <numerusform>%n por reempalmar</numerusform>
        </translation>
    </message>
    <message>
        <source>limit %1 dB, average %2</source>
        <translation>límite %1 dB, media %2</translation>
    </message>
    <message>
        <source>Hold: %1</source>
        <translation>Alto: %1</translation>
    </message>
    <message>
        <source>%1. Going on is written into the record. Who goes on, and why?</source>
        <translation>%1. Seguir queda escrito en el acta. ¿Quién sigue y por qué?</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Not saved. Press Enter to try again.</source>
        <translation>No se guardó. Pulse Intro para intentarlo de nuevo.</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Preparación</translation>
    </message>
    <message>
        <source>Job, closure, tools and the air around: every reading carries them</source>
        <translation>Obra, caja, herramientas y ambiente: cada lectura los lleva</translation>
    </message>
    <message>
        <source>A job has cables and closures; the splice plan says which fibre meets which</source>
        <translation>Una obra tiene cables y cajas; el plan de empalmes dice qué fibra se une con cuál</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importar</translation>
    </message>
    <message>
        <source>Every row lands or is set aside with its reason; the same file twice changes nothing</source>
        <translation>Cada fila entra o se aparta con su motivo; el mismo archivo dos veces no cambia nada</translation>
    </message>
    <message>
        <source>All splices</source>
        <translation>Todos los empalmes</translation>
    </message>
    <message>
        <source>fibre %1</source>
        <translation>fibra %1</translation>
    </message>
    <message>
        <source>Photos and notes of the splice or the closure</source>
        <translation>Fotos y notas del empalme o de la caja</translation>
    </message>
    <message>
        <source>Splice of fibre %1, attempt %2, %3 dB, %4</source>
        <translation>Empalme de la fibra %1, intento %2, %3 dB, %4</translation>
    </message>
    <message>
        <source>The job: spans, averages, link budget, closures</source>
        <translation>La obra: tramos, medias, presupuesto del enlace, cajas</translation>
    </message>
    <message>
        <source>Job %1: spans and closures</source>
        <translation>Obra %1: tramos y cajas</translation>
    </message>
    <message>
        <source>A span is accepted as one: its average, its link budget. A job without spans is one span</source>
        <translation>Un tramo se acepta entero: su media, su presupuesto. Una obra sin tramos es un tramo</translation>
    </message>
    <message>
        <source>span %1</source>
        <translation>tramo %1</translation>
    </message>
    <message>
        <source>the closure was edited twice, see Logbook, F7</source>
        <translation>la caja se editó dos veces, vea Bitácora, F7</translation>
    </message>
</context>
<context>
    <name>arc::ui::ToolCard</name>
    <message>
        <source>Arc calibration</source>
        <translation>Calibración de arco</translation>
    </message>
    <message>
        <source>arc calibration %1</source>
        <translation>calibración de arco %1</translation>
    </message>
    <message>
        <source>Blade: %1</source>
        <translation>Cuchilla: %1</translation>
    </message>
    <message>
        <source>nothing is counted for this tool yet</source>
        <translation>aún no se cuenta nada de esta herramienta</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>con %1</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>para %1</translation>
    </message>
    <message>
        <source>out of service</source>
        <translation>fuera de servicio</translation>
    </message>
</context>
<context>
    <name>arc::ui::TwicePanel</name>
    <message>
        <source>%1 on %2, %3</source>
        <translation>%1 en %2, %3</translation>
    </message>
    <message>
        <source>Closeout record no. %1 of %2 was issued twice: %3.</source>
        <translation>El acta de cierre n.º %1 de %2 se emitió dos veces: %3.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>No. %1 supersedes both.</source>
        <translation>La n.º %1 sustituye a ambas.</translation>
    </message>
    <message>
        <source>Issue the record again on Closeout: the new one supersedes both.</source>
        <translation>Emita el acta de nuevo en Cierre: la nueva sustituye a ambas.</translation>
    </message>
    <message>
        <source>Records edited twice</source>
        <translation>Registros editados dos veces</translation>
    </message>
    <message>
        <source>Keep version %1 of the record edited twice</source>
        <translation>Conservar la versión %1 del registro editado dos veces</translation>
    </message>
    <message>
        <source>Looking for records edited twice</source>
        <translation>Buscando registros editados dos veces</translation>
    </message>
    <message>
        <source>No record was edited on two laptops without one knowing of the other.</source>
        <translation>Ningún registro se editó en dos portátiles sin que uno supiera del otro.</translation>
    </message>
    <message>
        <source>These were edited on two laptops, neither knowing of the other. The later one shows until somebody chooses; both stay in the history. Press the number of the one to keep.</source>
        <translation>Estos se editaron en dos portátiles sin que uno supiera del otro. Se ve el posterior hasta que alguien elija; ambos quedan en la historia. Pulse el número del que se conserva.</translation>
    </message>
    <message>
        <source>Version %1, shows now</source>
        <translation>Versión %1, se ve ahora</translation>
    </message>
    <message>
        <source>Version %1</source>
        <translation>Versión %1</translation>
    </message>
    <message>
        <source>, by %1</source>
        <translation>, por %1</translation>
    </message>
    <message>
        <source>, from %1, %2</source>
        <translation>, desde %1, %2</translation>
    </message>
    <message>
        <source>Keep this one  %1</source>
        <translation>Conservar esta  %1</translation>
    </message>
    <message>
        <source>Writing the decision…</source>
        <translation>Escribiendo la decisión…</translation>
    </message>
    <message>
        <source>Settling a record edited twice</source>
        <translation>Resolviendo un registro editado dos veces</translation>
    </message>
    <message>
        <source>Kept: %1. The other stays in the history.</source>
        <translation>Conservado: %1. El otro queda en la historia.</translation>
    </message>
</context>
<context>
    <name>arc::ui::WhatIf</name>
    <message>
        <source>What would it lose?</source>
        <translation>¿Cuánto perdería?</translation>
    </message>
    <message>
        <source>1310 nm</source>
        <translation>1310 nm</translation>
    </message>
    <message>
        <source>1550 nm</source>
        <translation>1550 nm</translation>
    </message>
    <message>
        <source>Wavelength</source>
        <translation>Longitud de onda</translation>
    </message>
    <message>
        <source>Mode-field diameter of fibre A, µm</source>
        <translation>Diámetro del campo modal de la fibra A, µm</translation>
    </message>
    <message>
        <source>Mode-field diameter of fibre B, µm</source>
        <translation>Diámetro del campo modal de la fibra B, µm</translation>
    </message>
    <message>
        <source>Offset of the cores, µm</source>
        <translation>Desplazamiento de los núcleos, µm</translation>
    </message>
    <message>
        <source>Tilt of the axes, degrees</source>
        <translation>Inclinación de los ejes, grados</translation>
    </message>
    <message>
        <source>Loss of the splice</source>
        <translation>Pérdida del empalme</translation>
    </message>
    <message>
        <source>A model, not a measurement: round light spots, no gap, nothing between the ends. What a splicer shows is its own estimate; what a link loses is measured from both ends. A cleave angle is not the tilt of the axes. Never look into a fibre or a connector; follow local codes and licensed practice.</source>
        <translation>Un modelo, no una medición: manchas de luz redondas, sin hueco, nada entre los extremos. Lo que muestra una empalmadora es su propia estimación; lo que pierde un enlace se mide desde ambos extremos. Un ángulo de corte no es la inclinación de los ejes. No mire nunca dentro de una fibra o un conector; siga las normas locales y la práctica autorizada.</translation>
    </message>
    <message>
        <source>Equal fields of radius w: 4.343 (d/w)² dB for an offset d, 4.343 (π n w θ / λ)² dB for a tilt θ; unlike fields: -20 log10(2 w1 w2 / (w1² + w2²)) dB, and the parts add. Source: D. Marcuse, Bell Syst. Tech. J. 56(5), 1977. Readings from one end: IEC 60793-1-40 annex C.</source>
        <translation>Campos iguales de radio w: 4.343 (d/w)² dB por un desplazamiento d, 4.343 (π n w θ / λ)² dB por una inclinación θ; campos distintos: -20 log10(2 w1 w2 / (w1² + w2²)) dB, y las partes se suman. Fuente: D. Marcuse, Bell Syst. Tech. J. 56(5), 1977. Lecturas desde un extremo: IEC 60793-1-40, anexo C.</translation>
    </message>
    <message>
        <source>Close  Esc</source>
        <translation>Cerrar  Esc</translation>
    </message>
    <message>
        <source>of this: unlike mode fields %1, offset %2, tilt %3 dB</source>
        <translation>de ello: campos modales distintos %1, desplazamiento %2, inclinación %3 dB</translation>
    </message>
    <message>
        <source>measured from A %1, from B %2, mean of both %3 dB: one end alone misleads when the mode fields differ</source>
        <translation>medido desde A %1, desde B %2, media de ambos %3 dB: un solo extremo engaña cuando los campos modales difieren</translation>
    </message>
</context>
<context>
    <name>arc::ui::text</name>
    <message>
        <source>%1 dB</source>
        <translation>%1 dB</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 hPa</source>
        <translation>%1 hPa</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>ahora mismo</translation>
    </message>
    <message numerus="yes">
        <source>%n min ago</source>
        <translation>
            <numerusform>hace %n min</numerusform>
            <numerusform>hace %n min</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n h ago</source>
        <translation>
            <numerusform>hace %n h</numerusform>
            <numerusform>hace %n h</numerusform>
        </translation>
    </message>
    <message>
        <source>1 day ago</source>
        <translation>hace 1 día</translation>
    </message>
    <message numerus="yes">
        <source>%n days ago</source>
        <translation>
            <numerusform>hace %n día</numerusform>
            <numerusform>hace %n días</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>care cards</name>
    <message>
        <source>Calibrate the arc</source>
        <translation>Calibrar el arco</translation>
    </message>
    <message>
        <source>Sets arc power and arc position to the air, the height and the electrodes as they are now.</source>
        <translation>Ajusta la potencia y la posición del arco al aire, la altitud y los electrodos tal como están ahora.</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica común</translation>
    </message>
    <message>
        <source>An arc can ignite gas: in manholes, pits and other closed places test the air first and keep to the confined-space rules. Follow local codes and licensed practice.</source>
        <translation>Un arco puede encender gas: en pozos, arquetas y otros lugares cerrados mida primero el aire y cumpla las reglas de espacios confinados. Respete las normas locales y el trabajo autorizado.</translation>
    </message>
    <message>
        <source>Fibre ends are glass needles that are hard to see: wear eye protection, put every offcut into the shard bin, keep food and drink away from the work. Follow local codes and licensed practice.</source>
        <translation>Los extremos de fibra son agujas de vidrio difíciles de ver: lleve gafas de protección, eche cada recorte en el recipiente de restos, no tenga comida ni bebida cerca del trabajo. Respete las normas locales y el trabajo autorizado.</translation>
    </message>
    <message>
        <source>Electrodes carry high voltage: switch the splicer off and unplug it (battery and mains) before a finger or tool comes near them. Follow local codes and licensed practice.</source>
        <translation>Los electrodos llevan alta tensión: apague la empalmadora y desconéctela (batería y red) antes de acercar un dedo o una herramienta. Respete las normas locales y el trabajo autorizado.</translation>
    </message>
    <message>
        <source>Laser light in a fibre is invisible: treat every fibre as live and never look into an end or a connector, with or without a magnifier (IEC 60825-2). Follow local codes and licensed practice.</source>
        <translation>La luz láser en una fibra es invisible: trate cada fibra como activa y nunca mire a un extremo ni a un conector, con o sin lupa (IEC 60825-2). Respete las normas locales y el trabajo autorizado.</translation>
    </message>
    <message>
        <source>Reference fibre. Single-fibre splicer: standard single-mode (ITU-T G.652). Mass splicer: the fibre type of the mode in use, and as many fibres as are spliced at once</source>
        <translation>Fibra de referencia. Empalmadora de fibra única: monomodo estándar (ITU-T G.652). Empalmadora de cinta: el tipo de fibra del modo en uso y tantas fibras como se empalman a la vez</translation>
    </message>
    <message>
        <source>Thermometer, if the place has changed</source>
        <translation>Termómetro, si ha cambiado el lugar</translation>
    </message>
    <message>
        <source>Stripper, wipes and cleaver in good order</source>
        <translation>Peladora, toallitas y cortadora en buen estado</translation>
    </message>
    <message>
        <source>New electrodes burn at another place and strength: splices before the calibration are luck.</source>
        <translation>Los electrodos nuevos arden en otro lugar y con otra fuerza: los empalmes antes de la calibración son azar.</translation>
    </message>
    <message>
        <source>The electrodes were out: the arc may sit elsewhere, and the splicer would not know.</source>
        <translation>Los electrodos estuvieron fuera: el arco puede estar en otro lugar y la empalmadora no lo sabría.</translation>
    </message>
    <message>
        <source>Air pressure and temperature change the arc: losses step up in all grooves at once.</source>
        <translation>La presión y la temperatura del aire cambian el arco: las pérdidas suben de golpe en todas las ranuras.</translation>
    </message>
    <message>
        <source>After long disuse the arc is not what it was when the splicer was put away.</source>
        <translation>Tras mucho tiempo sin uso, el arco ya no es el que era cuando se guardó la empalmadora.</translation>
    </message>
    <message>
        <source>Let the splicer stand where the work is until it has taken on the temperature of the place.</source>
        <translation>Deje la empalmadora en el lugar del trabajo hasta que tome su temperatura.</translation>
    </message>
    <message>
        <source>Single-fibre splicer: take ITU-T G.652 fibre only. Mass splicer: take the fibre type of the mode in use and the same number of fibres as in the splices ahead.</source>
        <translation>Empalmadora de fibra única: use solo fibra ITU-T G.652. Empalmadora de cinta: use el tipo de fibra del modo en uso y el mismo número de fibras que en los empalmes por hacer.</translation>
    </message>
    <message>
        <source>Does the fibre fit the splicer and the mode?</source>
        <translation>¿Corresponde la fibra a la empalmadora y al modo?</translation>
    </message>
    <message>
        <source>Change the fibre before you go on: a calibration with the wrong type or number does not count.</source>
        <translation>Cambie la fibra antes de seguir: una calibración con otro tipo o número no cuenta.</translation>
    </message>
    <message>
        <source>Strip, wipe and cleave as for a splice. Poor ends make the calibration fail though the arc is fine.</source>
        <translation>Pele, limpie y corte como para un empalme. Con malos extremos la calibración falla aunque el arco esté bien.</translation>
    </message>
    <message>
        <source>Choose the arc calibration in the splicer&apos;s menu, load the fibres and start it.</source>
        <translation>Elija la calibración de arco en el menú de la empalmadora, cargue las fibras e iníciela.</translation>
    </message>
    <message>
        <source>Read both results: arc power and arc position.</source>
        <translation>Lea los dos resultados: potencia del arco y posición del arco.</translation>
    </message>
    <message>
        <source>After long disuse or a wrong calibration three to four runs are normal. After the fourth the diagnostic run is owed.</source>
        <translation>Tras mucho tiempo sin uso o una mala calibración, de tres a cuatro pasadas son normales. Después de la cuarta toca la prueba de diagnóstico.</translation>
    </message>
    <message>
        <source>Are power and position both adequate?</source>
        <translation>¿Son adecuadas tanto la potencia como la posición?</translation>
    </message>
    <message>
        <source>Write down both results of the last run and the fibre used.</source>
        <translation>Anote los dos resultados de la última pasada y la fibra usada.</translation>
    </message>
    <message>
        <source>Arc power</source>
        <translation>Potencia del arco</translation>
    </message>
    <message>
        <source>adequate</source>
        <translation>adecuada</translation>
    </message>
    <message>
        <source>not adequate</source>
        <translation>no adecuada</translation>
    </message>
    <message>
        <source>Arc position</source>
        <translation>Posición del arco</translation>
    </message>
    <message>
        <source>Fibre type</source>
        <translation>Tipo de fibra</translation>
    </message>
    <message>
        <source>G.652.D</source>
        <translation>G.652.D</translation>
    </message>
    <message>
        <source>G.652.B</source>
        <translation>G.652.B</translation>
    </message>
    <message>
        <source>G.651.1</source>
        <translation>G.651.1</translation>
    </message>
    <message>
        <source>G.653</source>
        <translation>G.653</translation>
    </message>
    <message>
        <source>G.654</source>
        <translation>G.654</translation>
    </message>
    <message>
        <source>G.655</source>
        <translation>G.655</translation>
    </message>
    <message>
        <source>G.656</source>
        <translation>G.656</translation>
    </message>
    <message>
        <source>G.657.A1</source>
        <translation>G.657.A1</translation>
    </message>
    <message>
        <source>G.657.A2</source>
        <translation>G.657.A2</translation>
    </message>
    <message>
        <source>G.657.B3</source>
        <translation>G.657.B3</translation>
    </message>
    <message>
        <source>Number of fibres</source>
        <translation>Número de fibras</translation>
    </message>
    <message>
        <source>Temperature (optional)</source>
        <translation>Temperatura (opcional)</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>Photo (optional)</source>
        <translation>Foto (opcional)</translation>
    </message>
    <message>
        <source>Clean cleaver blade</source>
        <translation>Limpiar la cuchilla</translation>
    </message>
    <message>
        <source>Wipes the film off the blade&apos;s flank; a sticky edge scores unevenly long before it is dull.</source>
        <translation>Quita la película del flanco de la cuchilla; un filo pegajoso marca de forma desigual mucho antes de gastarse.</translation>
    </message>
    <message>
        <source>The blade cuts, and so do the shards around it: never touch the edge, and keep fingers out of its way while anything moves. Follow local codes and licensed practice.</source>
        <translation>La cuchilla corta, y también los fragmentos a su alrededor: nunca toque el filo y no ponga los dedos en su camino mientras algo se mueva. Respete las normas locales y el trabajo autorizado.</translation>
    </message>
    <message>
        <source>Isopropyl alcohol burns and its vapour can ignite (flash point about 12 °C): ventilate, keep it from sparks and flames, and let every part dry before an arc. Follow local codes and licensed practice.</source>
        <translation>El alcohol isopropílico arde y su vapor puede encenderse (punto de inflamación de unos 12 °C): ventile, manténgalo lejos de chispas y llamas y deje secar cada pieza antes de un arco. Respete las normas locales y el trabajo autorizado.</translation>
    </message>
    <message>
        <source>Lint-free swabs</source>
        <translation>Hisopos sin pelusa</translation>
    </message>
    <message>
        <source>Isopropyl alcohol, at least 99 %</source>
        <translation>Alcohol isopropílico, al menos 99 %</translation>
    </message>
    <message>
        <source>ml</source>
        <translation>ml</translation>
    </message>
    <message>
        <source>Good light</source>
        <translation>Buena luz</translation>
    </message>
    <message>
        <source>A film on the edge scores the glass unevenly: angles scatter, and the blade is turned before it is spent.</source>
        <translation>Una película en el filo marca el vidrio de forma desigual: los ángulos se dispersan y la cuchilla se gira antes de gastarse.</translation>
    </message>
    <message>
        <source>Empty the offcut box into the shard bin. Lock the blade carriage as the cleaver&apos;s manual says.</source>
        <translation>Vacíe la caja de recortes en el recipiente de restos. Bloquee el carro de la cuchilla como dice el manual de la cortadora.</translation>
    </message>
    <message>
        <source>Dampen one swab end barely with alcohol and wipe up the flank of the blade, from the holder upward, and stop short of the edge.</source>
        <translation>Humedezca apenas un extremo del hisopo con alcohol y limpie el flanco de la cuchilla hacia arriba, desde el soporte, y pare antes del filo.</translation>
    </message>
    <message>
        <source>Lint torn off by the edge spoils the next cleaves, and the edge chips on anything hard.</source>
        <translation>La pelusa que arranca el filo estropea los cortes siguientes, y el filo se mella con cualquier cosa dura.</translation>
    </message>
    <message>
        <source>Dry the flank in the same direction with the other, dry swab end.</source>
        <translation>Seque el flanco en la misma dirección con el otro extremo, seco, del hisopo.</translation>
    </message>
    <message>
        <source>Look along the edge with light from the side.</source>
        <translation>Mire a lo largo del filo con luz lateral.</translation>
    </message>
    <message>
        <source>Is the blade free of film and lint?</source>
        <translation>¿Está la cuchilla libre de película y pelusa?</translation>
    </message>
    <message>
        <source>Cleave three test fibres and look at their ends.</source>
        <translation>Corte tres fibras de prueba y mire sus extremos.</translation>
    </message>
    <message>
        <source>Write down the result.</source>
        <translation>Anote el resultado.</translation>
    </message>
    <message>
        <source>The test cleaves were</source>
        <translation>Los cortes de prueba fueron</translation>
    </message>
    <message>
        <source>good</source>
        <translation>buenos</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>malos</translation>
    </message>
    <message>
        <source>Turn the blade to its next place</source>
        <translation>Girar la cuchilla a la posición siguiente</translation>
    </message>
    <message>
        <source>Brings a fresh piece of edge to the fibre: through all positions at this height first, only then the next height, starting again at position 1.</source>
        <translation>Lleva un trozo nuevo de filo a la fibra: primero todas las posiciones de esta altura, solo después la altura siguiente, empezando otra vez en la posición 1.</translation>
    </message>
    <message>
        <source>Adjusting tool of the cleaver</source>
        <translation>Llave de ajuste de la cortadora</translation>
    </message>
    <message>
        <source>Magnifier and good light</source>
        <translation>Lupa y buena luz</translation>
    </message>
    <message>
        <source>Test fibre</source>
        <translation>Fibra de prueba</translation>
    </message>
    <message>
        <source>A dull place on the edge tears the glass: angles and re-splices go up on every splicer this cleaver serves.</source>
        <translation>Un lugar gastado del filo desgarra el vidrio: suben los ángulos y los reempalmes en cada empalmadora que atiende esta cortadora.</translation>
    </message>
    <message>
        <source>Before the blade is turned, pads, anvil and blade must have been cleaned and the cleaves still poor, or the count be high.</source>
        <translation>Antes de girar la cuchilla, las almohadillas, el yunque y la cuchilla deben haberse limpiado y los cortes seguir malos, o el conteo ser alto.</translation>
    </message>
    <message>
        <source>Were pads, anvil and blade cleaned first?</source>
        <translation>¿Se limpiaron primero almohadillas, yunque y cuchilla?</translation>
    </message>
    <message>
        <source>Clean pads and anvil, then the blade, and try three cleaves. If they are good now, give up this card and leave the blade where it is.</source>
        <translation>Limpie almohadillas y yunque, después la cuchilla, y pruebe tres cortes. Si ahora son buenos, abandone esta ficha y deje la cuchilla donde está.</translation>
    </message>
    <message>
        <source>A clean blade often has half its life left at this place.</source>
        <translation>A una cuchilla limpia le queda a menudo media vida en este lugar.</translation>
    </message>
    <message>
        <source>Read height and position off the cleaver and compare with what this card says.</source>
        <translation>Lea la altura y la posición en la cortadora y compárelas con lo que dice esta ficha.</translation>
    </message>
    <message>
        <source>Empty the offcut box into the shard bin and lock the blade carriage.</source>
        <translation>Vacíe la caja de recortes en el recipiente de restos y bloquee el carro de la cuchilla.</translation>
    </message>
    <message>
        <source>Turn the blade by one position with the adjusting tool. From the last position of a height go to the next height at position 1. After the last position of the last height fit a new blade.</source>
        <translation>Gire la cuchilla una posición con la llave de ajuste. Desde la última posición de una altura pase a la altura siguiente en la posición 1. Tras la última posición de la última altura monte una cuchilla nueva.</translation>
    </message>
    <message>
        <source>Skipping positions wastes edge; raising early cuts into edge that is not spent.</source>
        <translation>Saltar posiciones desperdicia filo; subir antes de tiempo corta en filo sin gastar.</translation>
    </message>
    <message>
        <source>Cleave five test fibres.</source>
        <translation>Corte cinco fibras de prueba.</translation>
    </message>
    <message>
        <source>Look at the five ends.</source>
        <translation>Mire los cinco extremos.</translation>
    </message>
    <message>
        <source>If not: the blade may not be seated, or the height is off. Do not turn it further to cure that.</source>
        <translation>Si no: la cuchilla puede no estar asentada o la altura no es la correcta. No la gire más para arreglarlo.</translation>
    </message>
    <message>
        <source>Are the five test cleaves good?</source>
        <translation>¿Son buenos los cinco cortes de prueba?</translation>
    </message>
    <message>
        <source>Write down where the blade stands now.</source>
        <translation>Anote dónde está ahora la cuchilla.</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>next position</source>
        <translation>posición siguiente</translation>
    </message>
    <message>
        <source>next height</source>
        <translation>altura siguiente</translation>
    </message>
    <message>
        <source>new blade</source>
        <translation>cuchilla nueva</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>Clean clamp chips</source>
        <translation>Limpiar las mordazas</translation>
    </message>
    <message>
        <source>Wipes the small chips that press the fibres into the grooves; dirt under a chip lifts its fibre.</source>
        <translation>Limpia las pequeñas pastillas que aprietan las fibras en las ranuras; la suciedad bajo una pastilla levanta su fibra.</translation>
    </message>
    <message>
        <source>Dirt under a clamp chip lifts one fibre just as dirt in its groove does.</source>
        <translation>La suciedad bajo una pastilla levanta una fibra igual que la suciedad en su ranura.</translation>
    </message>
    <message>
        <source>Old film on the chips collects dust.</source>
        <translation>La película vieja en las pastillas junta polvo.</translation>
    </message>
    <message>
        <source>Open the wind cover, lift both clamps and take out every piece of fibre.</source>
        <translation>Abra la tapa cortaviento, levante ambas mordazas y saque todo trozo de fibra.</translation>
    </message>
    <message>
        <source>Dampen one swab end barely with alcohol and wipe both clamp chips along their length, one stroke in one direction.</source>
        <translation>Humedezca apenas un extremo del hisopo con alcohol y limpie ambas pastillas a lo largo, una pasada en una sola dirección.</translation>
    </message>
    <message>
        <source>Never across: the edge of the chip tears lint from the swab.</source>
        <translation>Nunca de través: el borde de la pastilla arranca pelusa del hisopo.</translation>
    </message>
    <message>
        <source>Dry both chips along their length with a fresh dry swab end.</source>
        <translation>Seque ambas pastillas a lo largo con un extremo nuevo y seco.</translation>
    </message>
    <message>
        <source>Look at both chips under magnification, from the side.</source>
        <translation>Mire ambas pastillas con aumento, de lado.</translation>
    </message>
    <message>
        <source>Are both chips clean and free of lint?</source>
        <translation>¿Están ambas pastillas limpias y sin pelusa?</translation>
    </message>
    <message>
        <source>Lower the clamps and close the cover once the alcohol has dried.</source>
        <translation>Baje las mordazas y cierre la tapa cuando el alcohol se haya secado.</translation>
    </message>
    <message>
        <source>Write down what you found.</source>
        <translation>Anote lo que encontró.</translation>
    </message>
    <message>
        <source>What was on the chips</source>
        <translation>Qué había en las pastillas</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>film</source>
        <translation>película</translation>
    </message>
    <message>
        <source>coating</source>
        <translation>recubrimiento</translation>
    </message>
    <message>
        <source>lint</source>
        <translation>pelusa</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otra cosa</translation>
    </message>
    <message>
        <source>Clean cleaver pads and anvil</source>
        <translation>Limpiar almohadillas</translation>
    </message>
    <message>
        <source>Cleans the four clamp pads and the anvil; dirt under a pad twists the fibre and the cleave breaks at an angle.</source>
        <translation>Limpia las cuatro almohadillas de sujeción y el yunque; la suciedad bajo una almohadilla tuerce la fibra y el corte sale en ángulo.</translation>
    </message>
    <message>
        <source>Shard bin</source>
        <translation>Recipiente de restos</translation>
    </message>
    <message>
        <source>Dirt on pads or anvil twists the fibre: cleave angles and re-splices go up on every splicer this cleaver serves.</source>
        <translation>La suciedad en almohadillas o yunque tuerce la fibra: suben los ángulos de corte y los reempalmes en cada empalmadora que atiende esta cortadora.</translation>
    </message>
    <message>
        <source>Shards and coating dust collect on the pads.</source>
        <translation>En las almohadillas se juntan fragmentos y polvo de recubrimiento.</translation>
    </message>
    <message>
        <source>Empty the offcut box into the shard bin. Move the blade carriage to its rest and keep fingers off the blade.</source>
        <translation>Vacíe la caja de recortes en el recipiente de restos. Lleve el carro de la cuchilla a su reposo y no acerque los dedos a la cuchilla.</translation>
    </message>
    <message>
        <source>Dampen one swab end barely with alcohol and wipe the two upper clamp pads.</source>
        <translation>Humedezca apenas un extremo del hisopo con alcohol y limpie las dos almohadillas superiores.</translation>
    </message>
    <message>
        <source>At most two pads per swab end, or the dirt of the first goes onto the third.</source>
        <translation>Como mucho dos almohadillas por extremo, o la suciedad de la primera pasa a la tercera.</translation>
    </message>
    <message>
        <source>Take a fresh swab end, barely damp, and wipe the two lower clamp pads.</source>
        <translation>Tome un extremo nuevo, apenas húmedo, y limpie las dos almohadillas inferiores.</translation>
    </message>
    <message>
        <source>Take a fresh swab end, barely damp, and wipe the anvil.</source>
        <translation>Tome un extremo nuevo, apenas húmedo, y limpie el yunque.</translation>
    </message>
    <message>
        <source>Dry the two upper pads with a dry swab end.</source>
        <translation>Seque las dos almohadillas superiores con un extremo seco.</translation>
    </message>
    <message>
        <source>Dry the two lower pads with another dry swab end.</source>
        <translation>Seque las dos almohadillas inferiores con otro extremo seco.</translation>
    </message>
    <message>
        <source>Dry the anvil with a dry swab end.</source>
        <translation>Seque el yunque con un extremo seco.</translation>
    </message>
    <message>
        <source>Look at all four pads and the anvil with light from the side.</source>
        <translation>Mire las cuatro almohadillas y el yunque con luz lateral.</translation>
    </message>
    <message>
        <source>Are the four pads and the anvil clean and dry?</source>
        <translation>¿Están limpias y secas las cuatro almohadillas y el yunque?</translation>
    </message>
    <message>
        <source>What was on pads and anvil</source>
        <translation>Qué había en almohadillas y yunque</translation>
    </message>
    <message>
        <source>shards</source>
        <translation>fragmentos</translation>
    </message>
    <message>
        <source>Diagnostic run</source>
        <translation>Prueba de diagnóstico</translation>
    </message>
    <message>
        <source>Lets the splicer check itself from cameras to motors when good fibre preparation and all care did not help.</source>
        <translation>Hace que la empalmadora se revise sola, de las cámaras a los motores, cuando ni la buena preparación ni todos los cuidados ayudaron.</translation>
    </message>
    <message>
        <source>Reference fibre, freshly stripped, wiped and cleaved</source>
        <translation>Fibra de referencia, recién pelada, limpia y cortada</translation>
    </message>
    <message>
        <source>Power for the whole run</source>
        <translation>Energía para toda la prueba</translation>
    </message>
    <message>
        <source>Something to write the result codes on</source>
        <translation>Algo donde anotar los códigos de resultado</translation>
    </message>
    <message>
        <source>Rule out the fibre: splice twice with reference fibre and fresh cleaves.</source>
        <translation>Descarte la fibra: empalme dos veces con fibra de referencia y cortes nuevos.</translation>
    </message>
    <message>
        <source>Most &quot;splicer faults&quot; are ends that were not clean or not square.</source>
        <translation>La mayoría de los «fallos de la empalmadora» son extremos que no estaban limpios o no eran rectos.</translation>
    </message>
    <message>
        <source>Look at both losses.</source>
        <translation>Mire las dos pérdidas.</translation>
    </message>
    <message>
        <source>Then it is the fibre or its preparation, not the splicer.</source>
        <translation>Entonces es la fibra o su preparación, no la empalmadora.</translation>
    </message>
    <message>
        <source>Is the loss back to normal with reference fibre?</source>
        <translation>¿Vuelve la pérdida a lo normal con fibra de referencia?</translation>
    </message>
    <message>
        <source>Choose the full diagnostic run in the splicer&apos;s menu, load fibres when it asks, and let it run to its end.</source>
        <translation>Elija la prueba de diagnóstico completa en el menú de la empalmadora, cargue fibras cuando lo pida y déjela terminar.</translation>
    </message>
    <message>
        <source>Read every line of the result.</source>
        <translation>Lea cada línea del resultado.</translation>
    </message>
    <message>
        <source>Did every check pass?</source>
        <translation>¿Pasaron todas las comprobaciones?</translation>
    </message>
    <message>
        <source>Note the failed lines, take the splicer out of service in the kit and send it to the workshop with the notes.</source>
        <translation>Anote las líneas fallidas, retire la empalmadora del servicio en el equipo y envíela al taller con las notas.</translation>
    </message>
    <message>
        <source>Opening the splicer further is workshop work.</source>
        <translation>Abrir más la empalmadora es trabajo de taller.</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>fibre</source>
        <translation>fibra</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>pasó</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>falló</translation>
    </message>
    <message>
        <source>Checks that failed</source>
        <translation>Comprobaciones fallidas</translation>
    </message>
    <message>
        <source>Replace electrodes</source>
        <translation>Cambiar los electrodos</translation>
    </message>
    <message>
        <source>Fits a new pair of electrodes and burns them in; worn tips make the arc wander and all losses rise and scatter.</source>
        <translation>Monta un par nuevo de electrodos y los estabiliza; con puntas gastadas el arco vaga y todas las pérdidas suben y se dispersan.</translation>
    </message>
    <message>
        <source>The tips are hard and sharp and break when dropped: hold electrodes by the shaft, and put the old pair into the shard bin. Follow local codes and licensed practice.</source>
        <translation>Las puntas son duras y afiladas y se rompen al caer: sujete los electrodos por el vástago y eche el par viejo en el recipiente de restos. Respete las normas locales y el trabajo autorizado.</translation>
    </message>
    <message>
        <source>New electrodes, a matched pair</source>
        <translation>Electrodos nuevos, un par emparejado</translation>
    </message>
    <message>
        <source>Tool for the electrode covers</source>
        <translation>Herramienta para las tapas de los electrodos</translation>
    </message>
    <message>
        <source>Lint-free wipes</source>
        <translation>Toallitas sin pelusa</translation>
    </message>
    <message>
        <source>Reference fibre for the arc calibration that follows</source>
        <translation>Fibra de referencia para la calibración de arco que sigue</translation>
    </message>
    <message>
        <source>Power for the whole stabilisation: a charged battery or the mains</source>
        <translation>Energía para toda la estabilización: una batería cargada o la red</translation>
    </message>
    <message>
        <source>Worn electrodes raise the loss of all grooves slowly and make it scatter; the arc may fail in the middle of a closure.</source>
        <translation>Los electrodos gastados suben despacio la pérdida de todas las ranuras y la dispersan; el arco puede fallar a media caja.</translation>
    </message>
    <message>
        <source>Switch the splicer off and unplug it: mains lead out, battery out. Wait a minute.</source>
        <translation>Apague la empalmadora y desconéctela: cable de red fuera, batería fuera. Espere un minuto.</translation>
    </message>
    <message>
        <source>Loosen the covers and draw both old electrodes straight out. Do not pull sideways.</source>
        <translation>Afloje las tapas y saque los dos electrodos viejos en línea recta. No tire de lado.</translation>
    </message>
    <message>
        <source>Hold the new pair against the light: both tips must be straight, clean and without a burr. Touch no tip.</source>
        <translation>Mire el par nuevo a contraluz: ambas puntas deben estar rectas, limpias y sin rebaba. No toque ninguna punta.</translation>
    </message>
    <message>
        <source>Slide the new electrodes in up to the stop, each to its own side, and fasten the covers as the splicer&apos;s manual says.</source>
        <translation>Introduzca los electrodos nuevos hasta el tope, cada uno en su lado, y fije las tapas como dice el manual de la empalmadora.</translation>
    </message>
    <message>
        <source>Never replace only one: the arc sits between two equal tips.</source>
        <translation>Nunca cambie solo uno: el arco está entre dos puntas iguales.</translation>
    </message>
    <message>
        <source>Close the cover, battery in, mains lead in, and switch on.</source>
        <translation>Cierre la tapa, ponga la batería, conecte el cable de red y encienda.</translation>
    </message>
    <message>
        <source>Tell the splicer that the electrodes are new, so that its own counter starts again.</source>
        <translation>Indique a la empalmadora que los electrodos son nuevos, para que su contador empiece de nuevo.</translation>
    </message>
    <message>
        <source>Start the electrode stabilisation in the splicer&apos;s menu with no fibre loaded.</source>
        <translation>Inicie la estabilización de electrodos en el menú de la empalmadora, sin fibra cargada.</translation>
    </message>
    <message>
        <source>Let the stabilisation run to its end. Leave the cover closed.</source>
        <translation>Deje terminar la estabilización. Mantenga la tapa cerrada.</translation>
    </message>
    <message>
        <source>About 8 to 10 minutes on single-fibre splicers, about 15 on mass splicers.</source>
        <translation>Unos 8 a 10 minutos en empalmadoras de fibra única, unos 15 en las de cinta.</translation>
    </message>
    <message>
        <source>Watch a few arcs on the screen.</source>
        <translation>Observe unos arcos en la pantalla.</translation>
    </message>
    <message>
        <source>An arc that still wanders after stabilisation usually means a tip that is not seated.</source>
        <translation>Si el arco sigue vagando tras la estabilización, casi siempre hay una punta mal asentada.</translation>
    </message>
    <message>
        <source>Is the arc straight, steady and in the middle?</source>
        <translation>¿Está el arco recto, firme y en el centro?</translation>
    </message>
    <message>
        <source>Write down what was fitted.</source>
        <translation>Anote lo que se montó.</translation>
    </message>
    <message>
        <source>The arc calibration comes next: until it is done, splices carry &quot;calibration owed&quot;.</source>
        <translation>Ahora sigue la calibración de arco: hasta que se haga, los empalmes llevan «calibración pendiente».</translation>
    </message>
    <message>
        <source>Batch or part label of the new pair</source>
        <translation>Lote o referencia del par nuevo</translation>
    </message>
    <message>
        <source>The old pair looked</source>
        <translation>El par viejo se veía</translation>
    </message>
    <message>
        <source>worn</source>
        <translation>gastado</translation>
    </message>
    <message>
        <source>bent</source>
        <translation>doblado</translation>
    </message>
    <message>
        <source>contaminated</source>
        <translation>contaminado</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>en buen estado</translation>
    </message>
    <message>
        <source>Clean V-grooves</source>
        <translation>Limpiar las ranuras en V</translation>
    </message>
    <message>
        <source>Takes dust and coating crumbs out of the V-grooves, which push a fibre aside and raise the loss of that groove.</source>
        <translation>Saca de las ranuras en V el polvo y las migas de recubrimiento, que apartan una fibra y suben la pérdida de esa ranura.</translation>
    </message>
    <message>
        <source>Soft groove brush, kept for grooves only</source>
        <translation>Cepillo blando, solo para ranuras</translation>
    </message>
    <message>
        <source>Stiff groove brush, kept for grooves only</source>
        <translation>Cepillo duro, solo para ranuras</translation>
    </message>
    <message>
        <source>Magnifier or the splicer&apos;s own camera view</source>
        <translation>Lupa o la vista de cámara de la empalmadora</translation>
    </message>
    <message>
        <source>Cleaning fluid of the groove kit</source>
        <translation>Líquido de limpieza del juego para ranuras</translation>
    </message>
    <message>
        <source>A crumb in one groove raises the loss of that fibre and often of its neighbour, splice after splice.</source>
        <translation>Una miga en una ranura sube la pérdida de esa fibra y a menudo la de su vecina, empalme tras empalme.</translation>
    </message>
    <message>
        <source>Dust settles in open grooves even on quiet days.</source>
        <translation>El polvo se posa en las ranuras abiertas incluso en días tranquilos.</translation>
    </message>
    <message>
        <source>Open the wind cover and lift the clamps. Take out every piece of fibre and drop it into the shard bin.</source>
        <translation>Abra la tapa cortaviento y levante las mordazas. Saque todo trozo de fibra y échelo en el recipiente de restos.</translation>
    </message>
    <message>
        <source>Brush all grooves with the soft brush, along the grooves and outward, away from the electrodes.</source>
        <translation>Cepille todas las ranuras con el cepillo blando, a lo largo y hacia fuera, alejándose de los electrodos.</translation>
    </message>
    <message>
        <source>The groove brushes are used on nothing else: grease from another part would be carried into the grooves.</source>
        <translation>Los cepillos de ranuras no se usan para nada más: llevarían grasa de otra pieza a las ranuras.</translation>
    </message>
    <message>
        <source>Look at every groove under magnification, on both sides.</source>
        <translation>Mire cada ranura con aumento, en ambos lados.</translation>
    </message>
    <message>
        <source>Is every groove clean on both sides?</source>
        <translation>¿Está limpia cada ranura en ambos lados?</translation>
    </message>
    <message>
        <source>Dampen one swab end barely with the kit&apos;s own fluid, never dripping, and draw it along the grooves of the left block.</source>
        <translation>Humedezca apenas un extremo del hisopo con el líquido del juego, sin que gotee, y páselo a lo largo de las ranuras del bloque izquierdo.</translation>
    </message>
    <message>
        <source>Too much fluid carries dirt down between the grooves and the block.</source>
        <translation>Demasiado líquido arrastra la suciedad entre las ranuras y el bloque.</translation>
    </message>
    <message>
        <source>Take a fresh swab end, barely damp, and draw it along the grooves of the right block.</source>
        <translation>Tome un extremo nuevo, apenas húmedo, y páselo a lo largo de las ranuras del bloque derecho.</translation>
    </message>
    <message>
        <source>Let it dry, then look again under magnification.</source>
        <translation>Deje secar y mire otra vez con aumento.</translation>
    </message>
    <message>
        <source>Where dirt still sticks, brush that groove lightly with the stiff brush, along the groove only.</source>
        <translation>Donde aún haya suciedad pegada, cepille esa ranura suavemente con el cepillo duro, solo a lo largo.</translation>
    </message>
    <message>
        <source>Go from gentle to firm: the stiff brush can mark a groove that the swab would have cleaned.</source>
        <translation>Vaya de suave a firme: el cepillo duro puede marcar una ranura que el hisopo habría limpiado.</translation>
    </message>
    <message>
        <source>Look at every groove under magnification once more.</source>
        <translation>Mire otra vez cada ranura con aumento.</translation>
    </message>
    <message>
        <source>After four rounds the rest is not for brushes: leave it and have the splicer checked.</source>
        <translation>Tras cuatro vueltas lo que queda no es para cepillos: déjelo y haga revisar la empalmadora.</translation>
    </message>
    <message>
        <source>Brush all grooves once more with the soft brush, so that no lint stays behind.</source>
        <translation>Cepille una vez más todas las ranuras con el cepillo blando, para que no quede pelusa.</translation>
    </message>
    <message>
        <source>Lower the clamps, close the cover and watch a test splice: the fibres must lie level in all grooves.</source>
        <translation>Baje las mordazas, cierre la tapa y observe un empalme de prueba: las fibras deben quedar a nivel en todas las ranuras.</translation>
    </message>
    <message>
        <source>What was in the grooves</source>
        <translation>Qué había en las ranuras</translation>
    </message>
    <message>
        <source>dust</source>
        <translation>polvo</translation>
    </message>
    <message>
        <source>glass</source>
        <translation>vidrio</translation>
    </message>
    <message>
        <source>Grooves that were dirty, by number</source>
        <translation>Ranuras que estaban sucias, por número</translation>
    </message>
    <message>
        <source>Clean camera lenses</source>
        <translation>Limpiar las lentes</translation>
    </message>
    <message>
        <source>Cleans the lenses through which the splicer sees the fibres; a dim or spotted view spoils both alignment and the loss estimate.</source>
        <translation>Limpia las lentes por las que la empalmadora ve las fibras; una vista turbia o con manchas estropea la alineación y la estimación de pérdida.</translation>
    </message>
    <message>
        <source>Tray for the electrodes, so that left and right are not mixed up</source>
        <translation>Bandeja para los electrodos, para no confundir izquierda y derecha</translation>
    </message>
    <message>
        <source>A spotted lens makes the splicer align by a wrong picture and estimate losses it cannot see.</source>
        <translation>Con una lente manchada la empalmadora alinea con una imagen falsa y estima pérdidas que no puede ver.</translation>
    </message>
    <message>
        <source>Arc residue films the lenses slowly.</source>
        <translation>Los residuos del arco empañan poco a poco las lentes.</translation>
    </message>
    <message>
        <source>Switch the splicer off and unplug it: mains lead out, battery out.</source>
        <translation>Apague la empalmadora y desconéctela: cable de red fuera, batería fuera.</translation>
    </message>
    <message>
        <source>Take both electrodes out and lay them down so that each goes back to its own side. Touch no tip.</source>
        <translation>Saque los dos electrodos y póngalos de modo que cada uno vuelva a su lado. No toque ninguna punta.</translation>
    </message>
    <message>
        <source>The swab would bend the tips, and a bent tip bends the arc.</source>
        <translation>El hisopo doblaría las puntas, y una punta doblada dobla el arco.</translation>
    </message>
    <message>
        <source>Dampen one swab end barely with alcohol and wipe the first lens in small circles from the middle outward.</source>
        <translation>Humedezca apenas un extremo del hisopo con alcohol y limpie la primera lente en círculos pequeños del centro hacia fuera.</translation>
    </message>
    <message>
        <source>No pressure: a lens shifted by a hair needs the workshop.</source>
        <translation>Sin presión: una lente movida el grosor de un pelo necesita el taller.</translation>
    </message>
    <message>
        <source>Dry the first lens in circles with a second, dry swab end.</source>
        <translation>Seque la primera lente en círculos con otro extremo, seco.</translation>
    </message>
    <message>
        <source>Take a fresh swab end, barely damp, and wipe the second lens in circles from the middle outward.</source>
        <translation>Tome un extremo nuevo, apenas húmedo, y limpie la segunda lente en círculos del centro hacia fuera.</translation>
    </message>
    <message>
        <source>Dry the second lens in circles with another dry swab end.</source>
        <translation>Seque la segunda lente en círculos con otro extremo seco.</translation>
    </message>
    <message>
        <source>Look at both lenses with good light from the side.</source>
        <translation>Mire ambas lentes con buena luz lateral.</translation>
    </message>
    <message>
        <source>Are both lenses free of spots, film and lint?</source>
        <translation>¿Están ambas lentes libres de manchas, película y pelusa?</translation>
    </message>
    <message>
        <source>Put both electrodes back, each on its own side, and fasten them as the splicer&apos;s manual says.</source>
        <translation>Vuelva a poner los dos electrodos, cada uno en su lado, y fíjelos como dice el manual de la empalmadora.</translation>
    </message>
    <message>
        <source>Wait until all alcohol has dried, close the cover, then battery in, mains lead in, and switch on.</source>
        <translation>Espere a que se seque todo el alcohol, cierre la tapa, ponga la batería, conecte el cable de red y encienda.</translation>
    </message>
    <message>
        <source>Load two prepared fibres and look at both camera views.</source>
        <translation>Cargue dos fibras preparadas y mire ambas vistas de cámara.</translation>
    </message>
    <message>
        <source>If spots stay although the lenses are clean, the diagnostic run tells whether it is the mirror or the light.</source>
        <translation>Si quedan manchas aunque las lentes estén limpias, la prueba de diagnóstico dice si es el espejo o la luz.</translation>
    </message>
    <message>
        <source>Is the picture even, without spots that stay when the fibre moves?</source>
        <translation>¿Es la imagen uniforme, sin manchas que se queden al mover la fibra?</translation>
    </message>
    <message>
        <source>What was on the lenses</source>
        <translation>Qué había en las lentes</translation>
    </message>
    <message>
        <source>Clean the stripper</source>
        <translation>Limpiar la peladora</translation>
    </message>
    <message>
        <source>Brings coating fragments out of blades, heating area and grip; a fragment nicks the glass, and nicked fibre breaks.</source>
        <translation>Saca los fragmentos de recubrimiento de las cuchillas, la zona caliente y el agarre; un fragmento mella el vidrio, y la fibra mellada se rompe.</translation>
    </message>
    <message>
        <source>The heating parts of strippers and sleeve ovens burn the skin: switch them off and let them cool before cleaning. Follow local codes and licensed practice.</source>
        <translation>Las partes calientes de peladoras y hornos de manguitos queman la piel: apáguelos y deje que se enfríen antes de limpiar. Respete las normas locales y el trabajo autorizado.</translation>
    </message>
    <message>
        <source>Small brush, kept for the stripper</source>
        <translation>Cepillo pequeño, solo para la peladora</translation>
    </message>
    <message>
        <source>Web-type ribbon and ribbonised loose tubes shed fragments at every strip; the next ribbon is pulled over them and breaks.</source>
        <translation>La cinta de tipo malla y los tubos holgados encintados sueltan fragmentos en cada pelado; la cinta siguiente pasa sobre ellos y se rompe.</translation>
    </message>
    <message>
        <source>Fragments build up under the blades and nick the fibre.</source>
        <translation>Los fragmentos se juntan bajo las cuchillas y mellan la fibra.</translation>
    </message>
    <message>
        <source>Residue hardens on the heating area.</source>
        <translation>Los residuos se endurecen en la zona caliente.</translation>
    </message>
    <message>
        <source>Switch the stripper off and let the heating area cool until it can be touched.</source>
        <translation>Apague la peladora y deje enfriar la zona caliente hasta que se pueda tocar.</translation>
    </message>
    <message>
        <source>Brush blades, heating area and rubber grip, outward, over the shard bin.</source>
        <translation>Cepille cuchillas, zona caliente y agarre de goma, hacia fuera, sobre el recipiente de restos.</translation>
    </message>
    <message>
        <source>Look at blades, heating area and grip.</source>
        <translation>Mire cuchillas, zona caliente y agarre.</translation>
    </message>
    <message>
        <source>Is everything free of fragments and residue?</source>
        <translation>¿Está todo libre de fragmentos y residuos?</translation>
    </message>
    <message>
        <source>Loosen stuck residue with a swab end dampened barely with alcohol: heating area and grip. Never wipe along the blade edge.</source>
        <translation>Suelte los residuos pegados con un extremo apenas humedecido con alcohol: zona caliente y agarre. Nunca limpie a lo largo del filo.</translation>
    </message>
    <message>
        <source>Dry both with the other, dry swab end.</source>
        <translation>Seque ambos con el otro extremo, seco.</translation>
    </message>
    <message>
        <source>Look again.</source>
        <translation>Mire otra vez.</translation>
    </message>
    <message>
        <source>Brush once more, or blow it out with air, so that no lint stays.</source>
        <translation>Cepille una vez más, o sople con aire, para que no quede pelusa.</translation>
    </message>
    <message>
        <source>Wear eye protection when you use air.</source>
        <translation>Lleve gafas de protección cuando use aire.</translation>
    </message>
    <message>
        <source>Write down anything worn.</source>
        <translation>Anote lo que esté gastado.</translation>
    </message>
    <message>
        <source>Blades and grip look</source>
        <translation>Cuchillas y agarre se ven</translation>
    </message>
</context>
<context>
    <name>help</name>
    <message>
        <source>Today, F2: which fibre is next, and is this loss good enough?</source>
        <translation>Hoy, F2: ¿qué fibra sigue, y basta esta pérdida?</translation>
    </message>
    <message>
        <source>Kit, F3: how worn is each splicer, cleaver and stripper?</source>
        <translation>Equipo, F3: ¿cuán gastada está cada empalmadora, cortadora y peladora?</translation>
    </message>
    <message>
        <source>Care, F4: what is due, and when can this crew do it?</source>
        <translation>Cuidados, F4: ¿qué toca, y cuándo puede hacerlo esta cuadrilla?</translation>
    </message>
    <message>
        <source>Drift, F5: did a machine change, since when, and which part?</source>
        <translation>Deriva, F5: ¿cambió una máquina, desde cuándo y qué pieza?</translation>
    </message>
    <message>
        <source>Closeout, F6: is the job complete, and what does the client get?</source>
        <translation>Cierre, F6: ¿está completa la obra, y qué recibe el cliente?</translation>
    </message>
    <message>
        <source>Ctrl+K finds every action, tool and job by a few letters. Ctrl+Z takes back what was entered in this sitting. The foot of the rail says when the last entry was on disk: what is not shown as saved there is not saved.</source>
        <translation>Ctrl+K halla con unas letras cualquier acción, herramienta u obra. Ctrl+Z deshace lo anotado en esta sesión. Al pie de la barra se ve cuándo quedó en disco la última entrada: lo que ahí no figura como guardado no está guardado.</translation>
    </message>
    <message>
        <source>The next fibre is chosen already. Type the digits the splicer shows: 4 is 0.04 dB, 12 is 0.12. Enter saves and goes on. A comma or a point means dB as written.</source>
        <translation>La fibra siguiente ya está elegida. Escriba las cifras que muestra la empalmadora: 4 es 0,04 dB, 12 es 0,12. Intro guarda y sigue. Con coma o punto se entiende dB tal como se escribe.</translation>
    </message>
    <message>
        <source>On a ribbon, Space goes to the next fibre and one Enter saves them all; or paste the losses of the whole ribbon.</source>
        <translation>En una cinta, Espacio pasa a la fibra siguiente y un solo Intro las guarda todas; o pegue las pérdidas de toda la cinta.</translation>
    </message>
    <message>
        <source>accept: within the limit of the job.</source>
        <translation>aceptar: dentro del límite de la obra.</translation>
    </message>
    <message>
        <source>re-splice: over the limit. R begins the next attempt.</source>
        <translation>reempalmar: sobre el límite. R empieza el intento siguiente.</translation>
    </message>
    <message>
        <source>high: over the limit after as many attempts as the rule asks for. K keeps it with a note; above the ceiling nothing is kept.</source>
        <translation>alto: sobre el límite tras los intentos que pide la regla. K lo conserva con una nota; sobre el techo no se conserva nada.</translation>
    </message>
    <message>
        <source>Digits on a fibre that has a loss correct it; V voids it with a reason. Nothing is overwritten: the book keeps every version.</source>
        <translation>Las cifras sobre una fibra que ya tiene pérdida la corrigen; V la anula con un motivo. Nada se sobrescribe: la bitácora conserva cada versión.</translation>
    </message>
    <message>
        <source>What is due stands in four queues, named by when a crew can do it: Hold, before the next splice; Next gap, before the next closure; Shift end; Bench day, at the depot.</source>
        <translation>Lo que toca está en cuatro colas, según cuándo puede hacerlo una cuadrilla: Alto, antes del próximo empalme; Pausa, antes de la próxima caja; Fin de turno; Día de taller, en el depósito.</translation>
    </message>
    <message>
        <source>Each item says why, since when, on what it is based and what happens if it is left. It goes away by doing the work, never by a tick. A hold can be overridden with a name and a reason; that is written into the record.</source>
        <translation>Cada punto dice por qué, desde cuándo, en qué se basa y qué pasa si se deja. Desaparece al hacer el trabajo, nunca con una marca. Un alto se puede levantar con un nombre y un motivo; eso queda escrito en el acta.</translation>
    </message>
    <message>
        <source>A care card leads through the work step by step, gentle before drastic, cautions first. It can be paused and taken up again.</source>
        <translation>Una ficha de cuidado guía el trabajo paso a paso, lo suave antes que lo drástico, las precauciones primero. Se puede pausar y retomar.</translation>
    </message>
    <message>
        <source>Before you begin</source>
        <translation>Antes de empezar</translation>
    </message>
    <message>
        <source>Electrodes carry high voltage: switch off and unplug before you reach in.</source>
        <translation>Los electrodos llevan alta tensión: apague y desconecte antes de meter la mano.</translation>
    </message>
    <message>
        <source>An arc ignites gas: test the air in manholes and pits. Let alcohol dry first.</source>
        <translation>Un arco enciende gas: mida el aire en pozos y arquetas. Deje secar antes el alcohol.</translation>
    </message>
    <message>
        <source>Fibre ends are glass needles: eye protection, shard bin, no food at the bench.</source>
        <translation>Los extremos de fibra son agujas de vidrio: gafas, recipiente de restos, nada de comida en el puesto.</translation>
    </message>
    <message>
        <source>Treat every fibre as live: never look into an end or a connector.</source>
        <translation>Trate cada fibra como activa: nunca mire a un extremo ni a un conector.</translation>
    </message>
    <message>
        <source>Local codes, the maker&apos;s manual and licensed practice go before any card.</source>
        <translation>Las normas locales, el manual del fabricante y el trabajo autorizado van antes que cualquier ficha.</translation>
    </message>
    <message>
        <source>The screen compares what was planned with what was spliced and lists every exception: over limit, missing, calibration owed, hold overridden, corrected afterwards. Each needs a disposition with a name and a reason before a final record can be issued.</source>
        <translation>La pantalla compara lo previsto con lo empalmado y enumera cada excepción: sobre el límite, falta, calibración pendiente, alto levantado, corregido después. Cada una necesita una resolución con nombre y motivo antes de emitir un acta final.</translation>
    </message>
    <message>
        <source>The record is a folder: pages, tables, data, a manifest that names every file with its SHA-256, and a signature over the manifest. A final record is never changed; a later one supersedes it.</source>
        <translation>El acta es una carpeta: páginas, tablas, datos, un manifiesto que nombra cada archivo con su SHA-256, y una firma sobre el manifiesto. Un acta final nunca se cambia; una posterior la sustituye.</translation>
    </message>
    <message>
        <source>How a stranger verifies it</source>
        <translation>Cómo la verifica un extraño</translation>
    </message>
    <message>
        <source>With this program: Verify a record on the Closeout screen, or: arcw verify FOLDER</source>
        <translation>Con este programa: Verificar un acta en la pantalla Cierre, o bien: arcw verify CARPETA</translation>
    </message>
    <message>
        <source>Without it: the SHA-256 of each file must be the one in manifest.json (sha256sum), the signature manifest.sig must fit manifest.json (openssl), and the key must be the one the crew gave: device.pem. The three commands are in the README.</source>
        <translation>Sin él: el SHA-256 de cada archivo debe ser el de manifest.json (sha256sum), la firma manifest.sig debe corresponder a manifest.json (openssl) y la clave debe ser la que dio la cuadrilla: device.pem. Las tres órdenes están en el README.</translation>
    </message>
    <message>
        <source>Whoever receives a record should get the crew&apos;s device.pem from the crew itself, not together with the record.</source>
        <translation>Quien recibe un acta debería obtener device.pem de la propia cuadrilla, no junto con el acta.</translation>
    </message>
    <message>
        <source>Laptops without a network hand over work in a satchel: one file on a stick. It holds the journal of the logbook, sealed and signed by the device that packed it.</source>
        <translation>Los portátiles sin red se entregan el trabajo en una valija: un archivo en una memoria USB. Contiene el diario de la bitácora, sellado y firmado por el equipo que la empaquetó.</translation>
    </message>
    <message>
        <source>Pack: on the laptop that has the work. A passphrase keeps strangers out.</source>
        <translation>Empaquetar: en el portátil que tiene el trabajo. Una frase de paso deja fuera a los extraños.</translation>
    </message>
    <message>
        <source>Take in: on the other laptop. The first time, compare the key of the sender by voice or on paper, then accept the device.</source>
        <translation>Tomar: en el otro portátil. La primera vez, compare la clave del remitente de viva voz o en papel y después acepte el equipo.</translation>
    </message>
    <message>
        <source>Satchels may come in any order and more than once: nothing is lost and nothing is doubled. Where two crews changed the same thing, the later version shows, both are kept, and the pair is listed for a person to look at.</source>
        <translation>Las valijas pueden llegar en cualquier orden y más de una vez: nada se pierde y nada se duplica. Si dos cuadrillas cambiaron lo mismo, se ve la versión posterior, se conservan ambas y el par se enumera para que lo mire una persona.</translation>
    </message>
    <message>
        <source>The loss pad</source>
        <translation>El panel de pérdidas</translation>
    </message>
    <message>
        <source>Care and safety</source>
        <translation>Cuidados y seguridad</translation>
    </message>
    <message>
        <source>Closeout and verifying</source>
        <translation>Cierre y verificación</translation>
    </message>
    <message>
        <source>Handover</source>
        <translation>Entrega de datos</translation>
    </message>
    <message>
        <source>One logbook, six screens. Each answers one question.</source>
        <translation>Una bitácora, seis pantallas. Cada una responde a una pregunta.</translation>
    </message>
    <message>
        <source>Logbook, F7: what was written, when, by whom and from where?</source>
        <translation>Bitácora, F7: ¿qué se escribió, cuándo, quién y desde dónde?</translation>
    </message>
    <message>
        <source>The screens</source>
        <translation>Las pantallas</translation>
    </message>
</context>
<context>
    <name>phrases</name>
    <message>
        <source>Hold</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Next gap</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Shift end</source>
        <translation>Fin de turno</translation>
    </message>
    <message>
        <source>Bench day</source>
        <translation>Día de taller</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica común</translation>
    </message>
    <message>
        <source>splicer</source>
        <translation>empalmadora</translation>
    </message>
    <message>
        <source>cleaver</source>
        <translation>cortadora</translation>
    </message>
    <message>
        <source>stripper</source>
        <translation>peladora</translation>
    </message>
    <message>
        <source>Stabilise electrodes</source>
        <translation>Estabilizar los electrodos</translation>
    </message>
    <message>
        <source>Raise the blade to its next height</source>
        <translation>Subir la cuchilla a la altura siguiente</translation>
    </message>
    <message>
        <source>Look into it and note it</source>
        <translation>Revisarlo y anotarlo</translation>
    </message>
    <message>
        <source>Stabilise electrodes, {tool}</source>
        <translation>Estabilizar los electrodos, {tool}</translation>
    </message>
    <message>
        <source>Raise the blade to its next height, {tool}</source>
        <translation>Subir la cuchilla a la altura siguiente, {tool}</translation>
    </message>
    <message>
        <source>Look into it and note it, {tool}</source>
        <translation>Revisarlo y anotarlo, {tool}</translation>
    </message>
    <message>
        <source>Calibrate the arc, {tool}</source>
        <translation>Calibrar el arco, {tool}</translation>
    </message>
    <message>
        <source>Clean cleaver blade, {tool}</source>
        <translation>Limpiar la cuchilla, {tool}</translation>
    </message>
    <message>
        <source>Turn the blade to its next place, {tool}</source>
        <translation>Girar la cuchilla a la posición siguiente, {tool}</translation>
    </message>
    <message>
        <source>Clean clamp chips, {tool}</source>
        <translation>Limpiar las mordazas, {tool}</translation>
    </message>
    <message>
        <source>Clean cleaver pads and anvil, {tool}</source>
        <translation>Limpiar almohadillas, {tool}</translation>
    </message>
    <message>
        <source>Diagnostic run, {tool}</source>
        <translation>Prueba de diagnóstico, {tool}</translation>
    </message>
    <message>
        <source>Replace electrodes, {tool}</source>
        <translation>Cambiar los electrodos, {tool}</translation>
    </message>
    <message>
        <source>Clean V-grooves, {tool}</source>
        <translation>Limpiar las ranuras en V, {tool}</translation>
    </message>
    <message>
        <source>Clean camera lenses, {tool}</source>
        <translation>Limpiar las lentes, {tool}</translation>
    </message>
    <message>
        <source>Clean the stripper, {tool}</source>
        <translation>Limpiar la peladora, {tool}</translation>
    </message>
    <message>
        <source>Order electrodes for {tool}</source>
        <translation>Pedir electrodos para {tool}</translation>
    </message>
    <message>
        <source>Order a blade for {tool}</source>
        <translation>Pedir una cuchilla para {tool}</translation>
    </message>
    <message>
        <source>Fit a new blade, {tool}</source>
        <translation>Montar una cuchilla nueva, {tool}</translation>
    </message>
    <message>
        <source>after each strip ({~source})</source>
        <translation>después de cada pelado ({~source})</translation>
    </message>
    <message>
        <source>&quot;{~care}&quot; of {@when} makes it compulsory</source>
        <translation>«{~care}» del {@when} lo hace obligatorio</translation>
    </message>
    <message>
        <source>&quot;{~care}&quot; did not reach its end by {@when}, after as many rounds as are allowed</source>
        <translation>«{~care}» no se logró el {@when}, tras todas las vueltas permitidas</translation>
    </message>
    <message>
        <source>the care record of {@when} and nothing after it that closes this ({~source})</source>
        <translation>el registro de cuidado del {@when} y nada después que lo cierre ({~source})</translation>
    </message>
    <message>
        <source>Splices before it are made with a tool nobody has proved.</source>
        <translation>Los empalmes de antes se hacen con una herramienta que nadie ha comprobado.</translation>
    </message>
    <message>
        <source>no calibration that counts since {@when}</source>
        <translation>ninguna calibración válida desde el {@when}</translation>
    </message>
    <message>
        <source>owed from {#celsius} °C or {#hpa} hPa on (settings; common practice)</source>
        <translation>se debe a partir de {#celsius} °C o {#hpa} hPa (ajustes; práctica común)</translation>
    </message>
    <message>
        <source>no calibration that counts since {@when}; owed from {#celsius} °C or {#hpa} hPa on (settings; common practice)</source>
        <translation>ninguna calibración válida desde el {@when}; se debe a partir de {#celsius} °C o {#hpa} hPa (ajustes; práctica común)</translation>
    </message>
    <message>
        <source>no calibration that counts since {@when}; owed after 1 day (setting; common practice)</source>
        <translation>ninguna calibración válida desde el {@when}; se debe tras 1 día (ajuste; práctica común)</translation>
    </message>
    <message>
        <source>no calibration that counts since {@when}; owed after {#count} days (setting; common practice)</source>
        <translation>ninguna calibración válida desde el {@when}; se debe tras {#count} días (ajuste; práctica común)</translation>
    </message>
    <message>
        <source>Splices until then carry &quot;calibration owed&quot;.</source>
        <translation>Los empalmes hasta entonces llevan «calibración pendiente».</translation>
    </message>
    <message>
        <source>arcs</source>
        <translation>arcos</translation>
    </message>
    <message>
        <source>fibres</source>
        <translation>fibras</translation>
    </message>
    <message>
        <source>cleaves</source>
        <translation>cortes</translation>
    </message>
    <message>
        <source>fibres cleaved</source>
        <translation>fibras</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>pelados</translation>
    </message>
    <message>
        <source>fibres stripped</source>
        <translation>fibras</translation>
    </message>
    <message>
        <source>uses</source>
        <translation>usos</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>{#count} {~unit}, every {#every}</source>
        <translation>{#count} {~unit}, cada {#every}</translation>
    </message>
    <message>
        <source>{#count} {~unit} since {@when}; the card says every {#every} ({~source})</source>
        <translation>{#count} {~unit} desde el {@when}; la ficha dice cada {#every} ({~source})</translation>
    </message>
    <message>
        <source>{#count} {~unit} in the book, and no such care in it; the card says every {#every} ({~source})</source>
        <translation>{#count} {~unit} en la bitácora y ningún cuidado de este tipo; la ficha dice cada {#every} ({~source})</translation>
    </message>
    <message>
        <source>1 day, every {#every} days</source>
        <translation>1 día, cada {#every} días</translation>
    </message>
    <message>
        <source>{#count} days, every {#every} days</source>
        <translation>{#count} días, cada {#every} días</translation>
    </message>
    <message>
        <source>1 day, every 1 day</source>
        <translation>1 día, cada día</translation>
    </message>
    <message>
        <source>{#count} days, every 1 day</source>
        <translation>{#count} días, cada día</translation>
    </message>
    <message>
        <source>last done {@when}; the card says every {#every} days ({~source})</source>
        <translation>hecho por última vez el {@when}; la ficha dice cada {#every} días ({~source})</translation>
    </message>
    <message>
        <source>first used {@when}; the card says every {#every} days ({~source})</source>
        <translation>usado por primera vez el {@when}; la ficha dice cada {#every} días ({~source})</translation>
    </message>
    <message>
        <source>last done {@when}; the card says every 1 day ({~source})</source>
        <translation>hecho por última vez el {@when}; la ficha dice cada día ({~source})</translation>
    </message>
    <message>
        <source>first used {@when}; the card says every 1 day ({~source})</source>
        <translation>usado por primera vez el {@when}; la ficha dice cada día ({~source})</translation>
    </message>
    <message>
        <source>also: {~why}</source>
        <translation>además: {~why}</translation>
    </message>
    <message>
        <source>the place or the weather changed on {@when} and the arc was not calibrated since</source>
        <translation>el lugar o el tiempo cambió el {@when} y el arco no se ha calibrado desde entonces</translation>
    </message>
    <message>
        <source>&quot;{~care}&quot; was done on {@when} and the arc was not calibrated since</source>
        <translation>«{~care}» se hizo el {@when} y el arco no se ha calibrado desde entonces</translation>
    </message>
    <message>
        <source>the calibration of {@when} does not count: {~why}</source>
        <translation>la calibración del {@when} no cuenta: {~why}</translation>
    </message>
    <message>
        <source>arc power or position was not adequate</source>
        <translation>la potencia o la posición del arco no era adecuada</translation>
    </message>
    <message>
        <source>arc power was not adequate</source>
        <translation>la potencia del arco no era adecuada</translation>
    </message>
    <message>
        <source>arc position was not adequate</source>
        <translation>la posición del arco no era adecuada</translation>
    </message>
    <message>
        <source>the fibre was not of the type that counts</source>
        <translation>la fibra no era del tipo que cuenta</translation>
    </message>
    <message>
        <source>the number of fibres was not the one that counts</source>
        <translation>el número de fibras no era el que cuenta</translation>
    </message>
    <message>
        <source>the electrodes were not stabilised before it</source>
        <translation>los electrodos no se estabilizaron antes</translation>
    </message>
    <message>
        <source>1 day without an arc before {@when}</source>
        <translation>1 día sin un arco antes del {@when}</translation>
    </message>
    <message>
        <source>{#count} days without an arc before {@when}</source>
        <translation>{#count} días sin un arco antes del {@when}</translation>
    </message>
    <message>
        <source>1 day without an arc since {@when}</source>
        <translation>1 día sin un arco desde el {@when}</translation>
    </message>
    <message>
        <source>{#count} days without an arc since {@when}</source>
        <translation>{#count} días sin un arco desde el {@when}</translation>
    </message>
    <message>
        <source>{#jump} °C away from {#from} °C, where the arc was last in order</source>
        <translation>a {#jump} °C de los {#from} °C en que el arco estaba en orden</translation>
    </message>
    <message>
        <source>{#jump} hPa away from {#from} hPa, where the arc was last in order</source>
        <translation>a {#jump} hPa de los {#from} hPa en que el arco estaba en orden</translation>
    </message>
    <message>
        <source>about {#arcs} arcs left</source>
        <translation>quedan unos {#arcs} arcos</translation>
    </message>
    <message>
        <source>about {#arcs} arcs left ({#low}-{#high})</source>
        <translation>quedan unos {#arcs} arcos ({#low}-{#high})</translation>
    </message>
    <message>
        <source>about {#arcs} arcs left at {#perday} arcs a day</source>
        <translation>quedan unos {#arcs} arcos a {#perday} arcos por día</translation>
    </message>
    <message>
        <source>about {#arcs} arcs left ({#low}-{#high}) at {#perday} arcs a day</source>
        <translation>quedan unos {#arcs} arcos ({#low}-{#high}) a {#perday} arcos por día</translation>
    </message>
    <message>
        <source>{#used} arcs since they were new; about {#limit} is usual (common practice)</source>
        <translation>{#used} arcos desde que eran nuevos; lo usual son unos {#limit} (práctica común)</translation>
    </message>
    <message>
        <source>{#used} arcs since they were new; about {#limit} is usual (common practice); the loss forecast says {~left}, 80 % interval</source>
        <translation>{#used} arcos desde que eran nuevos; lo usual son unos {#limit} (práctica común); el pronóstico de pérdidas dice: {~left}, intervalo del 80 %</translation>
    </message>
    <message>
        <source>the loss forecast puts their end here</source>
        <translation>el pronóstico de pérdidas sitúa aquí su fin</translation>
    </message>
    <message>
        <source>{#used} arcs of about {#limit}</source>
        <translation>{#used} arcos de unos {#limit}</translation>
    </message>
    <message>
        <source>They come to their end with no new pair in the case.</source>
        <translation>Se acaban sin que haya un par nuevo en el maletín.</translation>
    </message>
    <message>
        <source>the blade stands at its last place</source>
        <translation>la cuchilla está en su último lugar</translation>
    </message>
    <message>
        <source>about {#fibres} fibres left on it</source>
        <translation>le quedan unas {#fibres} fibras</translation>
    </message>
    <message>
        <source>about {#fibres} fibres left on this blade</source>
        <translation>a esta cuchilla le quedan unas {#fibres} fibras</translation>
    </message>
    <message>
        <source>height {#height} of {#heights}, position {#position} of {#positions}, {#used} fibres cleaved here of about {#limit} (common practice)</source>
        <translation>altura {#height} de {#heights}, posición {#position} de {#positions}, {#used} fibras cortadas aquí de unas {#limit} (práctica común)</translation>
    </message>
    <message>
        <source>There is no fresh edge left: every further cleave is at a dull place.</source>
        <translation>No queda filo nuevo: cada corte más se hace en un lugar gastado.</translation>
    </message>
    <message>
        <source>electrodes</source>
        <translation>electrodos</translation>
    </message>
    <message>
        <source>cleaver blade</source>
        <translation>cuchilla de la cortadora</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>par</translation>
    </message>
    <message>
        <source>the crew</source>
        <translation>la cuadrilla</translation>
    </message>
    <message>
        <source>Splices through this groove stay high, and some will have to be made again.</source>
        <translation>Los empalmes por esta ranura siguen altos y algunos habrá que repetirlos.</translation>
    </message>
    <message>
        <source>Losses keep rising and scattering until the arc fails.</source>
        <translation>Las pérdidas siguen subiendo y dispersándose hasta que el arco falle.</translation>
    </message>
    <message>
        <source>All grooves stay high until the arc fits the place again.</source>
        <translation>Todas las ranuras siguen altas hasta que el arco se ajuste de nuevo al lugar.</translation>
    </message>
    <message>
        <source>Poor cleaves keep coming, on every splicer this cleaver serves.</source>
        <translation>Siguen los malos cortes, en cada empalmadora que atiende esta cortadora.</translation>
    </message>
    <message>
        <source>The fault travels with the fibre; care of the tools only costs time.</source>
        <translation>El fallo viaja con la fibra; cuidar las herramientas solo cuesta tiempo.</translation>
    </message>
    <message>
        <source>The charts cannot tell luck from drift while the cause is open.</source>
        <translation>Los gráficos no distinguen azar de deriva mientras la causa esté abierta.</translation>
    </message>
    <message>
        <source>{splicer}, {mode}: {~chart} signal at arc {#arc}, began about arc {#began} ({#low}-{#high})</source>
        <translation>{splicer}, {mode}: señal de {~chart} en el arco {#arc}, empezó hacia el arco {#began} ({#low}-{#high})</translation>
    </message>
    <message>
        <source>{splicer}, {mode}: {~chart} signal at arc {#arc}, began about arc {#began} ({#low}-{#high}); {~evidence}</source>
        <translation>{splicer}, {mode}: señal de {~chart} en el arco {#arc}, empezó hacia el arco {#began} ({#low}-{#high}); {~evidence}</translation>
    </message>
    <message>
        <source>pair a cleaver with {label} in the kit to put it on its list</source>
        <translation>asigne una cortadora a {label} en el equipo para ponerlo en su lista</translation>
    </message>
    <message>
        <source>the blade is used up, fit a new one</source>
        <translation>la cuchilla está agotada, monte una nueva</translation>
    </message>
    <message>
        <source>a fibre lot is not cured by care of a tool: try a few splices on another splicer</source>
        <translation>un lote de fibra no se arregla cuidando una herramienta: pruebe unos empalmes en otra empalmadora</translation>
    </message>
    <message>
        <source>every step was tried: fit a new blade or take the cleaver out of service</source>
        <translation>se probaron todos los pasos: monte una cuchilla nueva o retire la cortadora del servicio</translation>
    </message>
    <message>
        <source>every step was tried: take the splicer out of service and have it checked</source>
        <translation>se probaron todos los pasos: retire la empalmadora del servicio y hágala revisar</translation>
    </message>
    <message>
        <source>{~care} on {@when} changed nothing</source>
        <translation>{~care} del {@when} no cambió nada</translation>
    </message>
    <message>
        <source>{~care} on {@when} made it worse</source>
        <translation>{~care} del {@when} lo empeoró</translation>
    </message>
    <message>
        <source>{~care} on {@when} helped in part</source>
        <translation>{~care} del {@when} ayudó en parte</translation>
    </message>
    <message>
        <source>{~care} on {@when} helped</source>
        <translation>{~care} del {@when} ayudó</translation>
    </message>
    <message>
        <source>{~care} on {@when} cannot be judged yet</source>
        <translation>{~care} del {@when} aún no se puede juzgar</translation>
    </message>
    <message>
        <source>cleaning the grooves</source>
        <translation>la limpieza de las ranuras</translation>
    </message>
    <message>
        <source>cleaning the clamp chips</source>
        <translation>la limpieza de las mordazas</translation>
    </message>
    <message>
        <source>cleaning the lenses</source>
        <translation>la limpieza de las lentes</translation>
    </message>
    <message>
        <source>the arc calibration</source>
        <translation>la calibración de arco</translation>
    </message>
    <message>
        <source>replacing the electrodes</source>
        <translation>el cambio de electrodos</translation>
    </message>
    <message>
        <source>the diagnostic run</source>
        <translation>la prueba de diagnóstico</translation>
    </message>
    <message>
        <source>cleaning pads and anvil</source>
        <translation>la limpieza de almohadillas y yunque</translation>
    </message>
    <message>
        <source>cleaning the blade</source>
        <translation>la limpieza de la cuchilla</translation>
    </message>
    <message>
        <source>turning the blade</source>
        <translation>el giro de la cuchilla</translation>
    </message>
    <message>
        <source>raising the blade</source>
        <translation>la subida de la cuchilla</translation>
    </message>
    <message>
        <source>Electrodes</source>
        <translation>Electrodos</translation>
    </message>
    <message>
        <source>V-grooves</source>
        <translation>Ranuras en V</translation>
    </message>
    <message>
        <source>Clamp chips</source>
        <translation>Pastillas de mordaza</translation>
    </message>
    <message>
        <source>Camera lenses</source>
        <translation>Lentes de cámara</translation>
    </message>
    <message>
        <source>Pads and anvil</source>
        <translation>Almohadillas y yunque</translation>
    </message>
    <message>
        <source>Blade</source>
        <translation>Cuchilla</translation>
    </message>
    <message>
        <source>Blade position</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>Stripper</source>
        <translation>Peladora</translation>
    </message>
    <message>
        <source>{~care}: tried, not reached</source>
        <translation>{~care}: intentado, no logrado</translation>
    </message>
    <message>
        <source>{~care}: height {#height}, position {#position}</source>
        <translation>{~care}: altura {#height}, posición {#position}</translation>
    </message>
    <message>
        <source>{~care}: height {#height}, position {#position} ({detail})</source>
        <translation>{~care}: altura {#height}, posición {#position} ({detail})</translation>
    </message>
    <message>
        <source>Environment changed</source>
        <translation>Cambió el ambiente</translation>
    </message>
    <message>
        <source>Environment changed: {detail}</source>
        <translation>Cambió el ambiente: {detail}</translation>
    </message>
    <message>
        <source>Cleaver {label} from now on</source>
        <translation>Desde ahora, cortadora {label}</translation>
    </message>
    <message>
        <source>Prepares for {label} from now on</source>
        <translation>Desde ahora prepara para {label}</translation>
    </message>
    <message>
        <source>Counter corrected to {#count}: {reason}</source>
        <translation>Contador corregido a {#count}: {reason}</translation>
    </message>
    <message>
        <source>Entry changed: {~text}</source>
        <translation>Registro cambiado: {~text}</translation>
    </message>
    <message>
        <source>Entered in the kit</source>
        <translation>Dada de alta en el equipo</translation>
    </message>
    <message>
        <source>Taken out of service</source>
        <translation>Fuera de servicio</translation>
    </message>
    <message>
        <source>Back in service</source>
        <translation>De nuevo en servicio</translation>
    </message>
    <message>
        <source>a tool that is gone</source>
        <translation>una herramienta que ya no está</translation>
    </message>
    <message>
        <source>calibrate the arc</source>
        <translation>calibrar el arco</translation>
    </message>
    <message>
        <source>replace electrodes</source>
        <translation>cambiar los electrodos</translation>
    </message>
    <message>
        <source>clean camera lenses</source>
        <translation>limpiar las lentes de cámara</translation>
    </message>
    <message>
        <source>not adequate</source>
        <translation>no adecuada</translation>
    </message>
    <message>
        <source>adequate</source>
        <translation>adecuada</translation>
    </message>
    <message>
        <source>groove clean</source>
        <translation>limpieza de ranuras</translation>
    </message>
    <message>
        <source>clamp clean</source>
        <translation>limpieza de mordazas</translation>
    </message>
    <message>
        <source>lens clean</source>
        <translation>limpieza de lentes</translation>
    </message>
    <message>
        <source>arc calibration</source>
        <translation>calibración de arco</translation>
    </message>
    <message>
        <source>electrode replace</source>
        <translation>cambio de electrodos</translation>
    </message>
    <message>
        <source>cleaver clean</source>
        <translation>limpieza de la cortadora</translation>
    </message>
    <message>
        <source>blade clean</source>
        <translation>limpieza de la cuchilla</translation>
    </message>
    <message>
        <source>blade rotate</source>
        <translation>giro de la cuchilla</translation>
    </message>
    <message>
        <source>blade raise</source>
        <translation>subida de la cuchilla</translation>
    </message>
    <message>
        <source>stripper clean</source>
        <translation>limpieza de la peladora</translation>
    </message>
    <message>
        <source>environment change</source>
        <translation>cambio de ambiente</translation>
    </message>
    <message>
        <source>The mean of 1 splice is {#mean} dB, the limit is {#limit} dB</source>
        <translation>La media de 1 empalme es {#mean} dB, el límite es {#limit} dB</translation>
    </message>
    <message>
        <source>The mean of {#count} splices is {#mean} dB, the limit is {#limit} dB</source>
        <translation>La media de {#count} empalmes es {#mean} dB, el límite es {#limit} dB</translation>
    </message>
    <message>
        <source>{#count} of {#planned} planned splices is missing: {~which}</source>
        <translation>falta {#count} de {#planned} empalmes previstos: {~which}</translation>
    </message>
    <message>
        <source>{#count} of {#planned} planned splices are missing: {~which}</source>
        <translation>faltan {#count} de {#planned} empalmes previstos: {~which}</translation>
    </message>
    <message>
        <source>nothing is spliced yet</source>
        <translation>todavía no se ha empalmado nada</translation>
    </message>
    <message>
        <source>fibre {numbers}</source>
        <translation>fibra {numbers}</translation>
    </message>
    <message>
        <source>fibres {numbers}</source>
        <translation>fibras {numbers}</translation>
    </message>
    <message>
        <source>1 splice is not in the splice plan</source>
        <translation>1 empalme no está en el plan de empalmes</translation>
    </message>
    <message>
        <source>{#count} splices are not in the splice plan</source>
        <translation>{#count} empalmes no están en el plan de empalmes</translation>
    </message>
    <message>
        <source>1 splice was made while an arc calibration was owed ({~why})</source>
        <translation>1 empalme se hizo con la calibración de arco pendiente ({~why})</translation>
    </message>
    <message>
        <source>{#count} splices were made while an arc calibration was owed ({~why})</source>
        <translation>{#count} empalmes se hicieron con la calibración de arco pendiente ({~why})</translation>
    </message>
    <message>
        <source>1 splice was made on hold; {by}: {reason}</source>
        <translation>1 empalme se hizo en alto; {by}: {reason}</translation>
    </message>
    <message>
        <source>{#count} splices were made on hold; {by}: {reason}</source>
        <translation>{#count} empalmes se hicieron en alto; {by}: {reason}</translation>
    </message>
    <message>
        <source>1 fibre measured from one end only at {#nm} nm: {fibres}</source>
        <translation>1 fibra medida desde un solo extremo a {#nm} nm: {fibres}</translation>
    </message>
    <message>
        <source>{#count} fibres measured from one end only at {#nm} nm: {fibres}</source>
        <translation>{#count} fibras medidas desde un solo extremo a {#nm} nm: {fibres}</translation>
    </message>
    <message>
        <source>{#count} fibres measured from one end only at {#nm} nm: {fibres} and {#more} more</source>
        <translation>{#count} fibras medidas desde un solo extremo a {#nm} nm: {fibres} y {#more} más</translation>
    </message>
    <message>
        <source>1 splice has no loss measured from both ends, though the rule asks for it</source>
        <translation>1 empalme no tiene pérdida medida desde ambos extremos, aunque la regla la pide</translation>
    </message>
    <message>
        <source>{#count} splices have no loss measured from both ends, though the rule asks for it</source>
        <translation>{#count} empalmes no tienen pérdida medida desde ambos extremos, aunque la regla la pide</translation>
    </message>
    <message>
        <source>A reading of groove {#groove} was corrected after the fact</source>
        <translation>Una lectura de la ranura {#groove} se corrigió después</translation>
    </message>
    <message>
        <source>A reading of groove {#groove} was corrected after the fact: {note}</source>
        <translation>Una lectura de la ranura {#groove} se corrigió después: {note}</translation>
    </message>
    <message>
        <source>{#count} first attempts of groove {#groove} are written down; the latest counts</source>
        <translation>hay {#count} primeros intentos anotados de la ranura {#groove}; cuenta el último</translation>
    </message>
    <message>
        <source>Groove {#groove}: {#loss} dB after 1 attempt, limit {#limit} dB</source>
        <translation>Ranura {#groove}: {#loss} dB tras 1 intento, límite {#limit} dB</translation>
    </message>
    <message>
        <source>Groove {#groove}: {#loss} dB after {#attempts} attempts, limit {#limit} dB</source>
        <translation>Ranura {#groove}: {#loss} dB tras {#attempts} intentos, límite {#limit} dB</translation>
    </message>
    <message>
        <source>Over ceiling</source>
        <translation>Sobre el techo</translation>
    </message>
    <message>
        <source>Over limit</source>
        <translation>Sobre el límite</translation>
    </message>
    <message>
        <source>Mean over limit</source>
        <translation>Media sobre el límite</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Falta</translation>
    </message>
    <message>
        <source>Not in the plan</source>
        <translation>Fuera del plan</translation>
    </message>
    <message>
        <source>Calibration owed</source>
        <translation>Calibración pendiente</translation>
    </message>
    <message>
        <source>Override used</source>
        <translation>Alto levantado</translation>
    </message>
    <message>
        <source>One-way only</source>
        <translation>Solo un sentido</translation>
    </message>
    <message>
        <source>Corrected after the fact</source>
        <translation>Corregido después</translation>
    </message>
    <message>
        <source>Entered twice</source>
        <translation>Anotado dos veces</translation>
    </message>
    <message>
        <source>No closure</source>
        <translation>Sin caja</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>rechazado</translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation>Aceptado</translation>
    </message>
    <message>
        <source>Accepted with exceptions</source>
        <translation>Aceptado con excepciones</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abierto</translation>
    </message>
    <message>
        <source>Not accepted</source>
        <translation>No aceptado</translation>
    </message>
    <message>
        <source>No link budget: the length of cable {label} is not written down.</source>
        <translation>Sin presupuesto de enlace: falta la longitud del cable {label}.</translation>
    </message>
    <message>
        <source>No link budget: no cable of this job is written down.</source>
        <translation>Sin presupuesto de enlace: no hay ningún cable de esta obra anotado.</translation>
    </message>
    <message>
        <source>No link budget: nothing is spliced yet.</source>
        <translation>Sin presupuesto de enlace: todavía no se ha empalmado nada.</translation>
    </message>
    <message>
        <source>No link budget: {~why}</source>
        <translation>Sin presupuesto de enlace: {~why}</translation>
    </message>
    <message>
        <source>One fibre through all cables and closures of the job in line.</source>
        <translation>Una fibra a través de todos los cables y cajas de la obra en línea.</translation>
    </message>
    <message>
        <source>Attenuation and connector loss are assumed values, not measured here.</source>
        <translation>La atenuación y la pérdida de conector son valores supuestos, no medidos aquí.</translation>
    </message>
    <message>
        <source>fibre</source>
        <translation>fibra</translation>
    </message>
    <message>
        <source>splices</source>
        <translation>empalmes</translation>
    </message>
    <message>
        <source>connectors</source>
        <translation>conectores</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>piezas</translation>
    </message>
    <message>
        <source>Sample: single fibre</source>
        <translation>Ejemplo: fibra única</translation>
    </message>
    <message>
        <source>Sample: ribbon</source>
        <translation>Ejemplo: cinta</translation>
    </message>
    <message>
        <source>Sample: two-way mean 0.10 dB</source>
        <translation>Ejemplo: media en dos sentidos 0,10 dB</translation>
    </message>
    <message>
        <source>Closeout record of job {job}, draft, made {date}: all {#files} files are as signed by this device (key {key}).</source>
        <translation>Acta de cierre de la obra {job}, borrador, hecha {date}: los {#files} archivos están como los firmó este equipo (clave {key}).</translation>
    </message>
    <message>
        <source>Closeout record of job {job}, final no. {#number}, made {date}: all {#files} files are as signed by this device (key {key}).</source>
        <translation>Acta de cierre de la obra {job}, final n.º {#number}, hecha {date}: los {#files} archivos están como los firmó este equipo (clave {key}).</translation>
    </message>
    <message>
        <source>Closeout record of job {job}, draft, made {date}: all {#files} files are as signed by the known device {name} (key {key}).</source>
        <translation>Acta de cierre de la obra {job}, borrador, hecha {date}: los {#files} archivos están como los firmó el equipo conocido {name} (clave {key}).</translation>
    </message>
    <message>
        <source>Closeout record of job {job}, final no. {#number}, made {date}: all {#files} files are as signed by the known device {name} (key {key}).</source>
        <translation>Acta de cierre de la obra {job}, final n.º {#number}, hecha {date}: los {#files} archivos están como los firmó el equipo conocido {name} (clave {key}).</translation>
    </message>
    <message>
        <source>Closeout record of job {job}, draft, made {date}: all {#files} files are as signed by a device that is not in your list of known devices (key {key}).</source>
        <translation>Acta de cierre de la obra {job}, borrador, hecha {date}: los {#files} archivos están como los firmó un equipo que no está en su lista de equipos conocidos (clave {key}).</translation>
    </message>
    <message>
        <source>Closeout record of job {job}, final no. {#number}, made {date}: all {#files} files are as signed by a device that is not in your list of known devices (key {key}).</source>
        <translation>Acta de cierre de la obra {job}, final n.º {#number}, hecha {date}: los {#files} archivos están como los firmó un equipo que no está en su lista de equipos conocidos (clave {key}).</translation>
    </message>
    <message>
        <source>The logbook verifies: {#rows} journal rows of 1 device, {#arcs} arcs, {#readings} readings; journal head {head}.</source>
        <translation>La bitácora se verifica: {#rows} filas de diario de 1 equipo, {#arcs} arcos, {#readings} lecturas; cabeza del diario {head}.</translation>
    </message>
    <message>
        <source>The logbook verifies: {#rows} journal rows of {#devices} devices, {#arcs} arcs, {#readings} readings; journal head {head}.</source>
        <translation>La bitácora se verifica: {#rows} filas de diario de {#devices} equipos, {#arcs} arcos, {#readings} lecturas; cabeza del diario {head}.</translation>
    </message>
    <message>
        <source>reading splices</source>
        <translation>leyendo empalmes</translation>
    </message>
    <message>
        <source>Checking the pages</source>
        <translation>Revisando las páginas</translation>
    </message>
    <message>
        <source>Checking the journal</source>
        <translation>Revisando el diario</translation>
    </message>
    <message>
        <source>all grooves together: {#before} -&gt; {#after} dB since arc {#arc} ({#arcs} arcs)</source>
        <translation>todas las ranuras juntas: {#before} -&gt; {#after} dB desde el arco {#arc} ({#arcs} arcos)</translation>
    </message>
    <message>
        <source>grows: {#per} dB per 100 arcs since about arc {#arc}</source>
        <translation>crece: {#per} dB cada 100 arcos desde el arco {#arc} aproximadamente</translation>
    </message>
    <message>
        <source>groove {#groove}: {#before} -&gt; {#after} dB (n = {#n}), the others {#others} dB</source>
        <translation>ranura {#groove}: {#before} -&gt; {#after} dB (n = {#n}), las demás {#others} dB</translation>
    </message>
    <message>
        <source>cleave angles: mean {#before} -&gt; {#after} degrees since arc {#arc}</source>
        <translation>ángulos de corte: media {#before} -&gt; {#after} grados desde el arco {#arc}</translation>
    </message>
    <message>
        <source>temperature {#before} -&gt; {#after} degrees C at arc {#arc}, where the step is</source>
        <translation>temperatura {#before} -&gt; {#after} grados C en el arco {#arc}, donde está el salto</translation>
    </message>
    <message>
        <source>{#hours} hours idle before arc {#arc}, where the step is</source>
        <translation>{#hours} horas sin uso antes del arco {#arc}, donde está el salto</translation>
    </message>
    <message>
        <source>step at arc {#arc}, right after {~action}</source>
        <translation>salto en el arco {#arc}, justo después de {~action}</translation>
    </message>
    <message>
        <source>no job began near here</source>
        <translation>ninguna obra empezó cerca de aquí</translation>
    </message>
    <message>
        <source>began with the job&apos;s first splice, arc {#arc}: {#before} -&gt; {#after} dB</source>
        <translation>empezó con el primer empalme de la obra, arco {#arc}: {#before} -&gt; {#after} dB</translation>
    </message>
    <message>
        <source>{#arcs} arcs since the electrodes were new</source>
        <translation>{#arcs} arcos desde que los electrodos eran nuevos</translation>
    </message>
    <message>
        <source>the splicer&apos;s counter stood at {#arcs} arcs: the electrodes are not older</source>
        <translation>el contador de la empalmadora marcaba {#arcs} arcos: los electrodos no son más viejos</translation>
    </message>
    <message>
        <source>{label}, with the same cleaver: {#rise} dB (n = {#n})</source>
        <translation>{label}, con la misma cortadora: {#rise} dB (n = {#n})</translation>
    </message>
    <message>
        <source>{label}, on the same job, is up too: {#rise} dB (n = {#n})</source>
        <translation>{label}, en la misma obra, también subió: {#rise} dB (n = {#n})</translation>
    </message>
    <message>
        <source>{label}, on the same job, is not clearly up: {#rise} dB (n = {#n})</source>
        <translation>{label}, en la misma obra, no subió con claridad: {#rise} dB (n = {#n})</translation>
    </message>
    <message>
        <source>no cleave angles were logged</source>
        <translation>no se anotaron ángulos de corte</translation>
    </message>
    <message>
        <source>it was gone after {~action}</source>
        <translation>desapareció después de {~action}</translation>
    </message>
    <message>
        <source>Grooves {#one} and {#other} are dirty, likely</source>
        <translation>Las ranuras {#one} y {#other} están sucias, probablemente</translation>
    </message>
    <message>
        <source>Groove {#groove} is dirty, likely</source>
        <translation>La ranura {#groove} está sucia, probablemente</translation>
    </message>
    <message>
        <source>The V-groove or a clamp is dirty, likely</source>
        <translation>La ranura en V o una mordaza está sucia, probablemente</translation>
    </message>
    <message>
        <source>The electrodes are worn, likely</source>
        <translation>Los electrodos están gastados, probablemente</translation>
    </message>
    <message>
        <source>The arc calibration is off, likely</source>
        <translation>La calibración de arco ya no ajusta, probablemente</translation>
    </message>
    <message>
        <source>The cleaver cuts badly, likely</source>
        <translation>La cortadora corta mal, probablemente</translation>
    </message>
    <message>
        <source>The fibre of this job differs, likely</source>
        <translation>La fibra de esta obra es distinta, probablemente</translation>
    </message>
    <message>
        <source>Something may have changed; no cause leads clearly yet</source>
        <translation>Algo puede haber cambiado; ninguna causa destaca todavía</translation>
    </message>
    <message>
        <source>Watch the next 25 arcs: this may have been luck.</source>
        <translation>Observe los próximos 25 arcos: puede haber sido azar.</translation>
    </message>
    <message>
        <source>No clear lead, so the gentlest first. {~advice}</source>
        <translation>Ninguna causa destaca: primero lo más suave. {~advice}</translation>
    </message>
    <message>
        <source>Clean the V-grooves and clamps: quick, and it undoes nothing.</source>
        <translation>Limpie las ranuras en V y las mordazas: es rápido y no estropea nada.</translation>
    </message>
    <message>
        <source>Replace the electrodes, stabilise them, then calibrate the arc.</source>
        <translation>Cambie los electrodos, estabilícelos y después calibre el arco.</translation>
    </message>
    <message>
        <source>Calibrate the arc until power and position are both adequate.</source>
        <translation>Calibre el arco hasta que la potencia y la posición sean adecuadas.</translation>
    </message>
    <message>
        <source>Clean the cleaver&apos;s pads and anvil, then the blade; rotate the blade only if that does not help.</source>
        <translation>Limpie las almohadillas y el yunque de la cortadora, después la cuchilla; gire la cuchilla solo si eso no ayuda.</translation>
    </message>
    <message>
        <source>Leave the splicer alone: make a few splices of this fibre on another splicer to be sure.</source>
        <translation>No toque la empalmadora: haga unos empalmes de esta fibra en otra empalmadora para estar seguro.</translation>
    </message>
    <message>
        <source>measured against estimated</source>
        <translation>medido frente a estimado</translation>
    </message>
    <message>
        <source>the look at the charts was stopped</source>
        <translation>se detuvo la revisión de los gráficos</translation>
    </message>
    <message>
        <source>groove_clean</source>
        <translation>la limpieza de ranuras</translation>
    </message>
    <message>
        <source>clamp_clean</source>
        <translation>la limpieza de mordazas</translation>
    </message>
    <message>
        <source>lens_clean</source>
        <translation>la limpieza de lentes</translation>
    </message>
    <message>
        <source>arc_calibration</source>
        <translation>la calibración de arco</translation>
    </message>
    <message>
        <source>electrode_replace</source>
        <translation>el cambio de electrodos</translation>
    </message>
    <message>
        <source>stabilise</source>
        <translation>la estabilización de electrodos</translation>
    </message>
    <message>
        <source>diagnostic</source>
        <translation>la prueba de diagnóstico</translation>
    </message>
    <message>
        <source>cleaver_clean</source>
        <translation>la limpieza de la cortadora</translation>
    </message>
    <message>
        <source>blade_clean</source>
        <translation>la limpieza de la cuchilla</translation>
    </message>
    <message>
        <source>blade_rotate</source>
        <translation>el giro de la cuchilla</translation>
    </message>
    <message>
        <source>blade_raise</source>
        <translation>la subida de la cuchilla</translation>
    </message>
    <message>
        <source>stripper_clean</source>
        <translation>la limpieza de la peladora</translation>
    </message>
    <message>
        <source>environment_change</source>
        <translation>el cambio de ambiente</translation>
    </message>
    <message>
        <source>note</source>
        <translation>la nota</translation>
    </message>
    <message>
        <source>common level</source>
        <translation>nivel común</translation>
    </message>
    <message>
        <source>single groove</source>
        <translation>ranura sola</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>dispersión</translation>
    </message>
    <message>
        <source>cleave angle</source>
        <translation>ángulo de corte</translation>
    </message>
    <message>
        <source>resplice rate</source>
        <translation>tasa de reempalmes</translation>
    </message>
    <message>
        <source>lone splice</source>
        <translation>empalme aislado</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>diferencia</translation>
    </message>
    <message>
        <source>Splicer {label}</source>
        <translation>Empalmadora {label}</translation>
    </message>
    <message>
        <source>Splicer {label} &quot;{nickname}&quot;</source>
        <translation>Empalmadora {label} «{nickname}»</translation>
    </message>
    <message>
        <source>Splicer {label} taken out of service</source>
        <translation>Empalmadora {label} fuera de servicio</translation>
    </message>
    <message>
        <source>Splicer {label} &quot;{nickname}&quot; taken out of service</source>
        <translation>Empalmadora {label} «{nickname}» fuera de servicio</translation>
    </message>
    <message>
        <source>Cleaver {label}</source>
        <translation>Cortadora {label}</translation>
    </message>
    <message>
        <source>Cleaver {label} &quot;{nickname}&quot;</source>
        <translation>Cortadora {label} «{nickname}»</translation>
    </message>
    <message>
        <source>Cleaver {label} taken out of service</source>
        <translation>Cortadora {label} fuera de servicio</translation>
    </message>
    <message>
        <source>Cleaver {label} &quot;{nickname}&quot; taken out of service</source>
        <translation>Cortadora {label} «{nickname}» fuera de servicio</translation>
    </message>
    <message>
        <source>Stripper {label}</source>
        <translation>Peladora {label}</translation>
    </message>
    <message>
        <source>Stripper {label} &quot;{nickname}&quot;</source>
        <translation>Peladora {label} «{nickname}»</translation>
    </message>
    <message>
        <source>Stripper {label} taken out of service</source>
        <translation>Peladora {label} fuera de servicio</translation>
    </message>
    <message>
        <source>Stripper {label} &quot;{nickname}&quot; taken out of service</source>
        <translation>Peladora {label} «{nickname}» fuera de servicio</translation>
    </message>
    <message>
        <source>Cleaver paired with a splicer</source>
        <translation>Cortadora asignada a una empalmadora</translation>
    </message>
    <message>
        <source>Counter set to {#count}</source>
        <translation>Contador puesto en {#count}</translation>
    </message>
    <message>
        <source>Counter set to {#count}: {reason}</source>
        <translation>Contador puesto en {#count}: {reason}</translation>
    </message>
    <message>
        <source>Job {label}</source>
        <translation>Obra {label}</translation>
    </message>
    <message>
        <source>Job {label}, {title}</source>
        <translation>Obra {label}, {title}</translation>
    </message>
    <message>
        <source>Cable {label} of 1 fibre</source>
        <translation>Cable {label} de 1 fibra</translation>
    </message>
    <message>
        <source>Cable {label} of {#count} fibres</source>
        <translation>Cable {label} de {#count} fibras</translation>
    </message>
    <message>
        <source>Closure {label}</source>
        <translation>Caja {label}</translation>
    </message>
    <message>
        <source>Closure {label}, 1 splice planned</source>
        <translation>Caja {label}, 1 empalme previsto</translation>
    </message>
    <message>
        <source>Closure {label}, {#count} splices planned</source>
        <translation>Caja {label}, {#count} empalmes previstos</translation>
    </message>
    <message>
        <source>Arc without a reading</source>
        <translation>Arco sin lectura</translation>
    </message>
    <message>
        <source>Splice of fibre {fibre}: {#loss} dB</source>
        <translation>Empalme de la fibra {fibre}: {#loss} dB</translation>
    </message>
    <message>
        <source>Splice of groove {#groove}: {#loss} dB</source>
        <translation>Empalme de la ranura {#groove}: {#loss} dB</translation>
    </message>
    <message>
        <source>Re-splice of fibre {fibre}: {#loss} dB</source>
        <translation>Reempalme de la fibra {fibre}: {#loss} dB</translation>
    </message>
    <message>
        <source>Re-splice of groove {#groove}: {#loss} dB</source>
        <translation>Reempalme de la ranura {#groove}: {#loss} dB</translation>
    </message>
    <message>
        <source>Splice of {#count} fibres: {#low} dB to {#high} dB</source>
        <translation>Empalme de {#count} fibras: de {#low} dB a {#high} dB</translation>
    </message>
    <message>
        <source>Re-splice of {#count} fibres: {#low} dB to {#high} dB</source>
        <translation>Reempalme de {#count} fibras: de {#low} dB a {#high} dB</translation>
    </message>
    <message>
        <source>Voided fibre {fibre}</source>
        <translation>Lectura de la fibra {fibre} anulada</translation>
    </message>
    <message>
        <source>Voided fibre {fibre}: {reason}</source>
        <translation>Lectura de la fibra {fibre} anulada: {reason}</translation>
    </message>
    <message>
        <source>Voided groove {#groove}</source>
        <translation>Lectura de la ranura {#groove} anulada</translation>
    </message>
    <message>
        <source>Voided groove {#groove}: {reason}</source>
        <translation>Lectura de la ranura {#groove} anulada: {reason}</translation>
    </message>
    <message>
        <source>Reading of fibre {fibre}: {#loss} dB</source>
        <translation>Lectura de la fibra {fibre}: {#loss} dB</translation>
    </message>
    <message>
        <source>Reading of groove {#groove}: {#loss} dB</source>
        <translation>Lectura de la ranura {#groove}: {#loss} dB</translation>
    </message>
    <message>
        <source>Measured fibre {fibre} at {#nm} nm: {#one} dB and {#other} dB, both directions</source>
        <translation>Fibra {fibre} medida a {#nm} nm: {#one} dB y {#other} dB, en ambos sentidos</translation>
    </message>
    <message>
        <source>Measured fibre {fibre} at {#nm} nm: {#one} dB, one way</source>
        <translation>Fibra {fibre} medida a {#nm} nm: {#one} dB, en un sentido</translation>
    </message>
    <message>
        <source>Measured fibre {fibre} at {#nm} nm: nothing, one way</source>
        <translation>Fibra {fibre} medida a {#nm} nm: nada, en un sentido</translation>
    </message>
    <message>
        <source>Groove clean</source>
        <translation>Limpieza de ranuras</translation>
    </message>
    <message>
        <source>Clamp clean</source>
        <translation>Limpieza de mordazas</translation>
    </message>
    <message>
        <source>Lens clean</source>
        <translation>Limpieza de lentes</translation>
    </message>
    <message>
        <source>Arc calibration</source>
        <translation>Calibración de arco</translation>
    </message>
    <message>
        <source>Electrode replace</source>
        <translation>Cambio de electrodos</translation>
    </message>
    <message>
        <source>Stabilise</source>
        <translation>Estabilización de electrodos</translation>
    </message>
    <message>
        <source>Diagnostic</source>
        <translation>Prueba de diagnóstico</translation>
    </message>
    <message>
        <source>Cleaver clean</source>
        <translation>Limpieza de la cortadora</translation>
    </message>
    <message>
        <source>Blade clean</source>
        <translation>Limpieza de la cuchilla</translation>
    </message>
    <message>
        <source>Blade rotate</source>
        <translation>Giro de la cuchilla</translation>
    </message>
    <message>
        <source>Blade raise</source>
        <translation>Subida de la cuchilla</translation>
    </message>
    <message>
        <source>Stripper clean</source>
        <translation>Limpieza de la peladora</translation>
    </message>
    <message>
        <source>Environment change</source>
        <translation>Cambio de ambiente</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Cuidado</translation>
    </message>
    <message>
        <source>Groove clean: {detail}</source>
        <translation>Limpieza de ranuras: {detail}</translation>
    </message>
    <message>
        <source>Clamp clean: {detail}</source>
        <translation>Limpieza de mordazas: {detail}</translation>
    </message>
    <message>
        <source>Lens clean: {detail}</source>
        <translation>Limpieza de lentes: {detail}</translation>
    </message>
    <message>
        <source>Electrode replace: {detail}</source>
        <translation>Cambio de electrodos: {detail}</translation>
    </message>
    <message>
        <source>Stabilise: {detail}</source>
        <translation>Estabilización de electrodos: {detail}</translation>
    </message>
    <message>
        <source>Diagnostic: {detail}</source>
        <translation>Prueba de diagnóstico: {detail}</translation>
    </message>
    <message>
        <source>Cleaver clean: {detail}</source>
        <translation>Limpieza de la cortadora: {detail}</translation>
    </message>
    <message>
        <source>Blade clean: {detail}</source>
        <translation>Limpieza de la cuchilla: {detail}</translation>
    </message>
    <message>
        <source>Stripper clean: {detail}</source>
        <translation>Limpieza de la peladora: {detail}</translation>
    </message>
    <message>
        <source>Environment change: {detail}</source>
        <translation>Cambio de ambiente: {detail}</translation>
    </message>
    <message>
        <source>Note: {detail}</source>
        <translation>Nota: {detail}</translation>
    </message>
    <message>
        <source>Arc calibration, adequate</source>
        <translation>Calibración de arco, adecuada</translation>
    </message>
    <message>
        <source>Arc calibration, adequate: {detail}</source>
        <translation>Calibración de arco, adecuada: {detail}</translation>
    </message>
    <message>
        <source>Arc calibration, not adequate</source>
        <translation>Calibración de arco, no adecuada</translation>
    </message>
    <message>
        <source>Arc calibration, not adequate: {detail}</source>
        <translation>Calibración de arco, no adecuada: {detail}</translation>
    </message>
    <message>
        <source>Arc calibration: {detail}</source>
        <translation>Calibración de arco: {detail}</translation>
    </message>
    <message>
        <source>Blade rotate, height {#height} position {#position}</source>
        <translation>Giro de la cuchilla, altura {#height} posición {#position}</translation>
    </message>
    <message>
        <source>Blade rotate, height {#height} position {#position}: {detail}</source>
        <translation>Giro de la cuchilla, altura {#height} posición {#position}: {detail}</translation>
    </message>
    <message>
        <source>Blade rotate: {detail}</source>
        <translation>Giro de la cuchilla: {detail}</translation>
    </message>
    <message>
        <source>Blade raise, height {#height} position {#position}</source>
        <translation>Subida de la cuchilla, altura {#height} posición {#position}</translation>
    </message>
    <message>
        <source>Blade raise, height {#height} position {#position}: {detail}</source>
        <translation>Subida de la cuchilla, altura {#height} posición {#position}: {detail}</translation>
    </message>
    <message>
        <source>Blade raise: {detail}</source>
        <translation>Subida de la cuchilla: {detail}</translation>
    </message>
    <message>
        <source>{~care} under way, step {#step}</source>
        <translation>{~care} en curso, paso {#step}</translation>
    </message>
    <message>
        <source>{~care} finished</source>
        <translation>{~care} terminada</translation>
    </message>
    <message>
        <source>{~care} left off at step {#step}</source>
        <translation>{~care} interrumpida en el paso {#step}</translation>
    </message>
    <message>
        <source>Care card {~care}, version {#version}</source>
        <translation>Ficha de cuidado {~care}, versión {#version}</translation>
    </message>
    <message>
        <source>Hold overridden</source>
        <translation>Alto levantado</translation>
    </message>
    <message>
        <source>Hold overridden: {reason}</source>
        <translation>Alto levantado: {reason}</translation>
    </message>
    <message>
        <source>Baseline moved for {mode}</source>
        <translation>Línea base movida para {mode}</translation>
    </message>
    <message>
        <source>Baseline moved for {mode}: {reason}</source>
        <translation>Línea base movida para {mode}: {reason}</translation>
    </message>
    <message>
        <source>Signal dismissed</source>
        <translation>Señal descartada</translation>
    </message>
    <message>
        <source>Signal dismissed: {reason}</source>
        <translation>Señal descartada: {reason}</translation>
    </message>
    <message>
        <source>Signal taken up again</source>
        <translation>Señal retomada</translation>
    </message>
    <message>
        <source>Signal taken up again: {reason}</source>
        <translation>Señal retomada: {reason}</translation>
    </message>
    <message>
        <source>Exception decided: accepted</source>
        <translation>Excepción resuelta: aceptada</translation>
    </message>
    <message>
        <source>Exception decided: rejected</source>
        <translation>Excepción resuelta: rechazada</translation>
    </message>
    <message>
        <source>Exception decided: {disposition}</source>
        <translation>Excepción resuelta: {disposition}</translation>
    </message>
    <message>
        <source>Closeout record {#number} issued</source>
        <translation>Acta de cierre {#number} emitida</translation>
    </message>
    <message>
        <source>Closeout record {#number} issued, supersedes {#old}</source>
        <translation>Acta de cierre {#number} emitida, sustituye a la {#old}</translation>
    </message>
    <message>
        <source>Setting {key}: {value}</source>
        <translation>Ajuste {key}: {value}</translation>
    </message>
    <message>
        <source>Setting {key} emptied</source>
        <translation>Ajuste {key} vaciado</translation>
    </message>
    <message>
        <source>Attachment {name}</source>
        <translation>Adjunto {name}</translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation>Deshecho</translation>
    </message>
    <message>
        <source>Taken back: {reason}</source>
        <translation>Deshecho: {reason}</translation>
    </message>
    <message>
        <source>Taken back: undone</source>
        <translation>Deshecho</translation>
    </message>
    <message>
        <source>Rescued: {~text}</source>
        <translation>Rescatado: {~text}</translation>
    </message>
    <message>
        <source>kept: {reason}</source>
        <translation>conservado: {reason}</translation>
    </message>
    <message>
        <source>re-spliced: {reason}</source>
        <translation>reempalmado: {reason}</translation>
    </message>
    <message>
        <source>corrected from {#loss}</source>
        <translation>corregido desde {#loss}</translation>
    </message>
    <message>
        <source>corrected from {#loss} ({before})</source>
        <translation>corregido desde {#loss} ({before})</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>deshecho</translation>
    </message>
    <message>
        <source>this tool is not in the kit</source>
        <translation>esta herramienta no está en el equipo</translation>
    </message>
    <message>
        <source>Choose one of the kit</source>
        <translation>Elija una del equipo</translation>
    </message>
    <message>
        <source>a calibration without its results proves nothing</source>
        <translation>una calibración sin sus resultados no demuestra nada</translation>
    </message>
    <message>
        <source>power, position</source>
        <translation>potencia, posición</translation>
    </message>
    <message>
        <source>Write down arc power and arc position, each adequate or not-adequate</source>
        <translation>Anote la potencia y la posición del arco, cada una adecuada o no adecuada</translation>
    </message>
    <message>
        <source>the fibre of the calibration is not named</source>
        <translation>no se nombró la fibra de la calibración</translation>
    </message>
    <message>
        <source>Write down its type, for example G.652.D, and how many fibres</source>
        <translation>Anote su tipo, por ejemplo G.652.D, y cuántas fibras</translation>
    </message>
    <message>
        <source>a new blade begins at height 1, position 1</source>
        <translation>una cuchilla nueva empieza en la altura 1, posición 1</translation>
    </message>
    <message>
        <source>Set it there</source>
        <translation>Póngala ahí</translation>
    </message>
    <message>
        <source>a note needs words</source>
        <translation>una nota necesita palabras</translation>
    </message>
    <message>
        <source>Say what was seen</source>
        <translation>Diga qué se vio</translation>
    </message>
    <message>
        <source>an environment change is noted at a splicer</source>
        <translation>un cambio de ambiente se anota en una empalmadora</translation>
    </message>
    <message>
        <source>there is no care called &quot;{name}&quot;</source>
        <translation>no existe el cuidado «{name}»</translation>
    </message>
    <message>
        <source>See the list of care cards</source>
        <translation>Mire la lista de fichas de cuidado</translation>
    </message>
    <message>
        <source>&quot;{~card}&quot; is care of a {~tool}</source>
        <translation>«{~card}» es un cuidado de {~tool}</translation>
    </message>
    <message>
        <source>Choose another tool or action</source>
        <translation>Elija otra herramienta u otra acción</translation>
    </message>
    <message>
        <source>&quot;{~card}&quot; is a card for a {~tool}</source>
        <translation>«{~card}» es una ficha para {~tool}</translation>
    </message>
    <message>
        <source>Choose another tool</source>
        <translation>Elija otra herramienta</translation>
    </message>
    <message>
        <source>&quot;{value}&quot; is none of flat, web, ribbonised</source>
        <translation>«{value}» no es flat, web ni ribbonised</translation>
    </message>
    <message>
        <source>&quot;{value}&quot; is not a number from {#least} to {#most}</source>
        <translation>«{value}» no es un número de {#least} a {#most}</translation>
    </message>
    <message>
        <source>&quot;{value}&quot; is not a whole number from {#least} to {#most}</source>
        <translation>«{value}» no es un número entero de {#least} a {#most}</translation>
    </message>
    <message>
        <source>Leave the setting as it was or give a value in range</source>
        <translation>Deje el ajuste como estaba o dé un valor dentro del margen</translation>
    </message>
    <message>
        <source>&quot;{~field}&quot; is not written down</source>
        <translation>«{~field}» no está anotado</translation>
    </message>
    <message>
        <source>Fill it in</source>
        <translation>Rellénelo</translation>
    </message>
    <message>
        <source>&quot;{value}&quot; is none of the choices</source>
        <translation>«{value}» no es ninguna de las opciones</translation>
    </message>
    <message>
        <source>Choose one of them</source>
        <translation>Elija una de ellas</translation>
    </message>
    <message>
        <source>&quot;{value}&quot; is not a number</source>
        <translation>«{value}» no es un número</translation>
    </message>
    <message>
        <source>Write it with digits and a point</source>
        <translation>Escríbalo con cifras y coma o punto</translation>
    </message>
    <message>
        <source>&quot;{~field}&quot; is a whole number</source>
        <translation>«{~field}» es un número entero</translation>
    </message>
    <message>
        <source>&quot;{value}&quot; is out of range</source>
        <translation>«{value}» está fuera de margen</translation>
    </message>
    <message>
        <source>Check what the tool shows</source>
        <translation>Mire lo que muestra la herramienta</translation>
    </message>
    <message>
        <source>this step has no field &quot;{key}&quot;</source>
        <translation>este paso no tiene el campo «{key}»</translation>
    </message>
    <message>
        <source>this screen is not a step</source>
        <translation>esta pantalla no es un paso</translation>
    </message>
    <message>
        <source>Acknowledge it</source>
        <translation>Confírmela</translation>
    </message>
    <message>
        <source>the timer was not started</source>
        <translation>el temporizador no se inició</translation>
    </message>
    <message>
        <source>Start it</source>
        <translation>Inícielo</translation>
    </message>
    <message>
        <source>the time is not over</source>
        <translation>el tiempo no ha terminado</translation>
    </message>
    <message>
        <source>Wait until the timer ends</source>
        <translation>Espere a que termine el temporizador</translation>
    </message>
    <message>
        <source>this step wants an answer</source>
        <translation>este paso pide una respuesta</translation>
    </message>
    <message>
        <source>Answer it</source>
        <translation>Respóndalo</translation>
    </message>
    <message>
        <source>this screen asks nothing</source>
        <translation>esta pantalla no pregunta nada</translation>
    </message>
    <message>
        <source>this step asks nothing</source>
        <translation>este paso no pregunta nada</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Siga</translation>
    </message>
    <message>
        <source>nothing is to be written down here</source>
        <translation>aquí no hay nada que anotar</translation>
    </message>
    <message>
        <source>this is the first screen</source>
        <translation>esta es la primera pantalla</translation>
    </message>
    <message>
        <source>this run is closed</source>
        <translation>esta ejecución está cerrada</translation>
    </message>
    <message>
        <source>Start the card anew</source>
        <translation>Empiece la ficha de nuevo</translation>
    </message>
    <message>
        <source>this run belongs to another tool or card</source>
        <translation>esta ejecución es de otra herramienta o ficha</translation>
    </message>
    <message>
        <source>Open it from its tool</source>
        <translation>Ábrala desde su herramienta</translation>
    </message>
    <message>
        <source>the card was changed since this run began (version {#old}, now {#new})</source>
        <translation>la ficha se cambió desde que empezó esta ejecución (versión {#old}, ahora {#new})</translation>
    </message>
    <message>
        <source>the run stands at a step the card does not have</source>
        <translation>la ejecución está en un paso que la ficha no tiene</translation>
    </message>
    <message>
        <source>there is nothing to acknowledge here</source>
        <translation>aquí no hay nada que confirmar</translation>
    </message>
    <message>
        <source>Go on with the step</source>
        <translation>Siga con el paso</translation>
    </message>
    <message>
        <source>the cautions were not acknowledged</source>
        <translation>no se confirmaron las precauciones</translation>
    </message>
    <message>
        <source>the materials were not checked</source>
        <translation>no se comprobaron los materiales</translation>
    </message>
    <message>
        <source>Read and acknowledge them first</source>
        <translation>Léalas y confírmelas primero</translation>
    </message>
    <message>
        <source>this step has no timer</source>
        <translation>este paso no tiene temporizador</translation>
    </message>
    <message>
        <source>the card is not done to its end</source>
        <translation>la ficha no se ha hecho hasta el final</translation>
    </message>
    <message>
        <source>Finish its steps</source>
        <translation>Termine sus pasos</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is neither adequate nor not-adequate</source>
        <translation>«{text}» no es ni adecuada ni no adecuada</translation>
    </message>
    <message>
        <source>Write down what the splicer showed</source>
        <translation>Anote lo que mostró la empalmadora</translation>
    </message>
    <message>
        <source>a calibration has two results, arc power and arc position</source>
        <translation>una calibración tiene dos resultados: potencia y posición del arco</translation>
    </message>
    <message>
        <source>a blade stands at a height and a position</source>
        <translation>una cuchilla está en una altura y una posición</translation>
    </message>
    <message>
        <source>Write down both</source>
        <translation>Anote ambas</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potencia</translation>
    </message>
    <message>
        <source>position</source>
        <translation>posición</translation>
    </message>
    <message>
        <source>this blade has {#heights} heights of {#positions} positions</source>
        <translation>esta cuchilla tiene {#heights} alturas de {#positions} posiciones</translation>
    </message>
    <message>
        <source>all places of this blade are used up</source>
        <translation>todas las posiciones de esta cuchilla están gastadas</translation>
    </message>
    <message>
        <source>the blade is raised only after all {#positions} positions at this height</source>
        <translation>la cuchilla se sube solo después de las {#positions} posiciones de esta altura</translation>
    </message>
    <message>
        <source>all {#positions} positions at this height are used, so the blade is raised</source>
        <translation>se usaron las {#positions} posiciones de esta altura, así que la cuchilla se sube</translation>
    </message>
    <message>
        <source>a blade goes from place to place without skipping any</source>
        <translation>la cuchilla va de posición en posición sin saltarse ninguna</translation>
    </message>
    <message>
        <source>the blade stands at height {#height}, position {#position}</source>
        <translation>la cuchilla está en la altura {#height}, posición {#position}</translation>
    </message>
    <message>
        <source>The next place is height {#height}, position {#position}</source>
        <translation>La siguiente es altura {#height}, posición {#position}</translation>
    </message>
    <message>
        <source>Fit a new blade</source>
        <translation>Monte una cuchilla nueva</translation>
    </message>
    <message>
        <source>stopped; nothing was written</source>
        <translation>detenido; no se escribió nada</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>detenido</translation>
    </message>
    <message>
        <source>job {label} has no splices</source>
        <translation>la obra {label} no tiene empalmes</translation>
    </message>
    <message>
        <source>A final record needs at least one</source>
        <translation>Un acta final necesita al menos uno</translation>
    </message>
    <message>
        <source>1 exception waits for a disposition</source>
        <translation>1 excepción espera resolución</translation>
    </message>
    <message>
        <source>{#count} exceptions wait for a disposition</source>
        <translation>{#count} excepciones esperan resolución</translation>
    </message>
    <message>
        <source>Decide on each with a name and a reason, then issue the record</source>
        <translation>Resuelva cada una con un nombre y un motivo, y después emita el acta</translation>
    </message>
    <message>
        <source>a final record needs the name of who issues it</source>
        <translation>un acta final necesita el nombre de quien la emite</translation>
    </message>
    <message>
        <source>no job {label} in this logbook</source>
        <translation>no hay ninguna obra {label} en esta bitácora</translation>
    </message>
    <message>
        <source>It holds no job yet</source>
        <translation>Aún no contiene ninguna obra</translation>
    </message>
    <message>
        <source>It holds {labels}</source>
        <translation>Contiene {labels}</translation>
    </message>
    <message>
        <source>the job is not in this logbook</source>
        <translation>la obra no está en esta bitácora</translation>
    </message>
    <message>
        <source>this program does not issue final records</source>
        <translation>este programa no emite actas finales</translation>
    </message>
    <message>
        <source>Write a draft</source>
        <translation>Escriba un borrador</translation>
    </message>
    <message>
        <source>care cards cannot be read or changed here</source>
        <translation>aquí no se pueden leer ni cambiar fichas de cuidado</translation>
    </message>
    <message>
        <source>Correct it and save again</source>
        <translation>Corríjalo y guarde de nuevo</translation>
    </message>
    <message>
        <source>the record has no identity</source>
        <translation>el registro no tiene identidad</translation>
    </message>
    <message>
        <source>the {field} is missing</source>
        <translation>falta el dato «{field}»</translation>
    </message>
    <message>
        <source>the {field} is longer than {#limit} bytes</source>
        <translation>el dato «{field}» pasa de {#limit} bytes</translation>
    </message>
    <message>
        <source>the {field} holds a line break or another control character</source>
        <translation>el dato «{field}» contiene un salto de línea u otro carácter de control</translation>
    </message>
    <message>
        <source>the {field} is not UTF-8 text</source>
        <translation>el dato «{field}» no es texto UTF-8</translation>
    </message>
    <message>
        <source>the {field} holds a zero byte</source>
        <translation>el dato «{field}» contiene un byte cero</translation>
    </message>
    <message>
        <source>the time lies outside the years 1970 to 9999</source>
        <translation>la hora está fuera de los años 1970 a 9999</translation>
    </message>
    <message>
        <source>the offset from UTC is more than 14 hours</source>
        <translation>la diferencia con UTC pasa de 14 horas</translation>
    </message>
    <message>
        <source>the {field} is {#value}, not between {#low} and {#high}</source>
        <translation>el dato «{field}» es {#value}, no está entre {#low} y {#high}</translation>
    </message>
    <message>
        <source>the care action is missing</source>
        <translation>falta la acción de cuidado</translation>
    </message>
    <message>
        <source>the care action is a key of small letters, digits and underscores</source>
        <translation>la acción de cuidado es una clave de letras minúsculas, cifras y guiones bajos</translation>
    </message>
    <message>
        <source>an estimated loss cannot be negative</source>
        <translation>una pérdida estimada no puede ser negativa</translation>
    </message>
    <message>
        <source>a loss above 50 dB is not a splice</source>
        <translation>una pérdida de más de 50 dB no es un empalme</translation>
    </message>
    <message>
        <source>the cleave angle is not between 0 and 90 degrees</source>
        <translation>el ángulo de corte no está entre 0 y 90 grados</translation>
    </message>
    <message>
        <source>the average limit must be above 0 dB</source>
        <translation>el límite de la media debe estar por encima de 0 dB</translation>
    </message>
    <message>
        <source>the limit per splice must be above 0 dB</source>
        <translation>el límite por empalme debe estar por encima de 0 dB</translation>
    </message>
    <message>
        <source>the ceiling lies below the limit per splice</source>
        <translation>el techo está por debajo del límite por empalme</translation>
    </message>
    <message>
        <source>the ceiling is above 50 dB</source>
        <translation>el techo pasa de 50 dB</translation>
    </message>
    <message>
        <source>a single-fibre splicer has one groove</source>
        <translation>una empalmadora de fibra única tiene una ranura</translation>
    </message>
    <message>
        <source>splicer and cleaver are the same tool</source>
        <translation>empalmadora y cortadora son la misma herramienta</translation>
    </message>
    <message>
        <source>a counter correction needs a reason</source>
        <translation>corregir el contador necesita un motivo</translation>
    </message>
    <message>
        <source>the cable length is not between 0 and 20,000 km</source>
        <translation>la longitud del cable no está entre 0 y 20.000 km</translation>
    </message>
    <message>
        <source>the plan has more than 6,912 splices</source>
        <translation>el plan tiene más de 6.912 empalmes</translation>
    </message>
    <message>
        <source>fibre {#number} is planned twice on one side</source>
        <translation>la fibra {#number} está prevista dos veces en un lado</translation>
    </message>
    <message>
        <source>an arc joins 1, 2, 4, 8, 12 or 16 fibres, not {#count}</source>
        <translation>un arco une 1, 2, 4, 8, 12 o 16 fibras, no {#count}</translation>
    </message>
    <message>
        <source>the temperature is not between -60 and 85 degrees Celsius</source>
        <translation>la temperatura no está entre -60 y 85 grados Celsius</translation>
    </message>
    <message>
        <source>the humidity is not between 0 and 100 %</source>
        <translation>la humedad no está entre 0 y 100 %</translation>
    </message>
    <message>
        <source>the pressure is not between 300 and 1,100 hPa</source>
        <translation>la presión no está entre 300 y 1.100 hPa</translation>
    </message>
    <message>
        <source>groove {#groove} in an arc of {#count} fibres</source>
        <translation>ranura {#groove} en un arco de {#count} fibras</translation>
    </message>
    <message>
        <source>two readings of one groove in one arc</source>
        <translation>dos lecturas de una ranura en un arco</translation>
    </message>
    <message>
        <source>the readings are not in groove order</source>
        <translation>las lecturas no están en el orden de las ranuras</translation>
    </message>
    <message>
        <source>neither direction was measured</source>
        <translation>no se midió ningún sentido</translation>
    </message>
    <message>
        <source>a measured loss beyond 50 dB is not a splice</source>
        <translation>una pérdida medida de más de 50 dB no es un empalme</translation>
    </message>
    <message>
        <source>the card version is negative</source>
        <translation>la versión de la ficha es negativa</translation>
    </message>
    <message>
        <source>only an arc calibration has a calibration result</source>
        <translation>solo una calibración de arco tiene resultado de calibración</translation>
    </message>
    <message>
        <source>there is already a tool called &quot;{label}&quot;</source>
        <translation>ya existe una herramienta «{label}»</translation>
    </message>
    <message>
        <source>there is already a job called &quot;{label}&quot;</source>
        <translation>ya existe una obra «{label}»</translation>
    </message>
    <message>
        <source>there is already a closure called &quot;{label}&quot;</source>
        <translation>ya existe una caja «{label}»</translation>
    </message>
    <message>
        <source>there is already a cable called &quot;{label}&quot;</source>
        <translation>ya existe un cable «{label}»</translation>
    </message>
    <message>
        <source>label</source>
        <translation>etiqueta</translation>
    </message>
    <message>
        <source>Choose another label</source>
        <translation>Elija otra etiqueta</translation>
    </message>
    <message>
        <source>the {~what} is not in this logbook</source>
        <translation>no está en esta bitácora: {~what}</translation>
    </message>
    <message>
        <source>Add it first</source>
        <translation>Añádalo primero</translation>
    </message>
    <message>
        <source>the splice is not in this logbook</source>
        <translation>el empalme no está en esta bitácora</translation>
    </message>
    <message>
        <source>channel {#channel} is beyond the {#count} fibres of this arc</source>
        <translation>el canal {#channel} pasa de las {#count} fibras de este arco</translation>
    </message>
    <message>
        <source>channel</source>
        <translation>canal</translation>
    </message>
    <message>
        <source>Correct the channel</source>
        <translation>Corrija el canal</translation>
    </message>
    <message>
        <source>an issued record is never changed</source>
        <translation>un acta emitida nunca se cambia</translation>
    </message>
    <message>
        <source>Issue a new one instead</source>
        <translation>Emita una nueva en su lugar</translation>
    </message>
    <message>
        <source>what is to be taken back is not in this logbook</source>
        <translation>lo que se quiere deshacer no está en esta bitácora</translation>
    </message>
    <message>
        <source>an issued record cannot be taken back</source>
        <translation>un acta emitida no se puede deshacer</translation>
    </message>
    <message>
        <source>Issue a new one that supersedes it</source>
        <translation>Emita una nueva que la sustituya</translation>
    </message>
    <message>
        <source>the copy was stopped; nothing was left behind</source>
        <translation>la copia se detuvo; no quedó nada</translation>
    </message>
    <message>
        <source>the logbook stayed busy for a minute</source>
        <translation>la bitácora estuvo ocupada un minuto</translation>
    </message>
    <message>
        <source>Try again later</source>
        <translation>Inténtelo más tarde</translation>
    </message>
    <message>
        <source>there is a file of that name already</source>
        <translation>ya existe un archivo con ese nombre</translation>
    </message>
    <message>
        <source>Choose another name for the copy</source>
        <translation>Elija otro nombre para la copia</translation>
    </message>
    <message>
        <source>Choose another name</source>
        <translation>Elija otro nombre</translation>
    </message>
    <message>
        <source>the copy could not get its name: {why}</source>
        <translation>la copia no pudo recibir su nombre: {why}</translation>
    </message>
    <message>
        <source>Correct the card; until then the shipped one is used</source>
        <translation>Corrija la ficha; hasta entonces se usa la original</translation>
    </message>
    <message>
        <source>there is no card {name} of version {#version}</source>
        <translation>no existe la ficha {name} de versión {#version}</translation>
    </message>
    <message>
        <source>there is no shipped card {name}</source>
        <translation>no hay ficha original {name}</translation>
    </message>
    <message>
        <source>Ask whoever issued the record for a fresh copy</source>
        <translation>Pida una copia nueva a quien emitió el acta</translation>
    </message>
    <message>
        <source>the folder cannot be read: {why}</source>
        <translation>la carpeta no se puede leer: {why}</translation>
    </message>
    <message>
        <source>the place for the record is taken by something that is no folder</source>
        <translation>el lugar del acta lo ocupa algo que no es una carpeta</translation>
    </message>
    <message>
        <source>Choose another folder</source>
        <translation>Elija otra carpeta</translation>
    </message>
    <message>
        <source>the folder is not empty and holds no closeout record</source>
        <translation>la carpeta no está vacía y no contiene un acta de cierre</translation>
    </message>
    <message>
        <source>Choose another folder; nothing was written</source>
        <translation>Elija otra carpeta; no se escribió nada</translation>
    </message>
    <message>
        <source>the folder holds a final record, and a final record is never changed</source>
        <translation>la carpeta contiene un acta final, y un acta final nunca se cambia</translation>
    </message>
    <message>
        <source>the folder holds a file that is not part of the draft</source>
        <translation>la carpeta contiene un archivo que no es parte del borrador</translation>
    </message>
    <message>
        <source>Move it elsewhere or choose another folder</source>
        <translation>Muévalo a otro sitio o elija otra carpeta</translation>
    </message>
    <message>
        <source>the signing library does not start</source>
        <translation>la biblioteca de firma no arranca</translation>
    </message>
    <message>
        <source>the folder cannot be made: {why}</source>
        <translation>la carpeta no se puede crear: {why}</translation>
    </message>
    <message>
        <source>the record cannot be put in its place: {why}</source>
        <translation>el acta no se puede poner en su sitio: {why}</translation>
    </message>
    <message>
        <source>{file} is missing</source>
        <translation>falta {file}</translation>
    </message>
    <message>
        <source>{file} is not an ordinary file</source>
        <translation>{file} no es un archivo corriente</translation>
    </message>
    <message>
        <source>{file} has {#bytes} bytes, the manifest says {#said}</source>
        <translation>{file} tiene {#bytes} bytes, el manifiesto dice {#said}</translation>
    </message>
    <message>
        <source>{file} was changed: its SHA-256 is not the one in the manifest</source>
        <translation>{file} fue modificado: su SHA-256 no es el del manifiesto</translation>
    </message>
    <message>
        <source>{file} does not belong to the record</source>
        <translation>{file} no pertenece al acta</translation>
    </message>
    <message>
        <source>manifest.sig is no signature</source>
        <translation>manifest.sig no es una firma</translation>
    </message>
    <message>
        <source>manifest.json or manifest.sig was changed: the signature does not fit</source>
        <translation>manifest.json o manifest.sig fue modificado: la firma no corresponde</translation>
    </message>
    <message>
        <source>the column key cannot be used: {~why}</source>
        <translation>la clave de columnas no se puede usar: {~why}</translation>
    </message>
    <message>
        <source>Correct the key and try again</source>
        <translation>Corrija la clave e inténtelo de nuevo</translation>
    </message>
    <message>
        <source>the file has no column &quot;{name}&quot;, which the column key names</source>
        <translation>el archivo no tiene la columna «{name}» que nombra la clave de columnas</translation>
    </message>
    <message>
        <source>Choose the key that fits this file</source>
        <translation>Elija la clave que corresponde a este archivo</translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation>esto es una carpeta, no un archivo</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>ese archivo no existe</translation>
    </message>
    <message>
        <source>Check the name</source>
        <translation>Compruebe el nombre</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>el archivo no se puede leer</translation>
    </message>
    <message>
        <source>Check that you may read it</source>
        <translation>Compruebe que puede leerlo</translation>
    </message>
    <message>
        <source>the file holds zero bytes and is no text</source>
        <translation>el archivo contiene bytes cero y no es texto</translation>
    </message>
    <message>
        <source>Export the log as CSV and import that</source>
        <translation>Exporte el registro como CSV e importe ese archivo</translation>
    </message>
    <message>
        <source>the scenario Harrow Ridge is not in this program</source>
        <translation>el escenario Harrow Ridge no está en este programa</translation>
    </message>
    <message>
        <source>the device key cannot be read</source>
        <translation>la clave del equipo no se puede leer</translation>
    </message>
    <message>
        <source>Move the file away; a new key is then made, and others must accept it again</source>
        <translation>Aparte el archivo; se hará una clave nueva y los demás tendrán que aceptarla de nuevo</translation>
    </message>
    <message>
        <source>the device key cannot be written</source>
        <translation>la clave del equipo no se puede escribir</translation>
    </message>
    <message>
        <source>there is no place for the device key</source>
        <translation>no hay lugar para la clave del equipo</translation>
    </message>
    <message>
        <source>Set ARCWRIGHT_HOME to a folder of yours</source>
        <translation>Ponga en ARCWRIGHT_HOME una carpeta suya</translation>
    </message>
    <message>
        <source>the list of known devices has a line that is no device</source>
        <translation>la lista de equipos conocidos tiene una línea que no es un equipo</translation>
    </message>
    <message>
        <source>a device needs a name of one line</source>
        <translation>un equipo necesita un nombre de una línea</translation>
    </message>
    <message>
        <source>the list of known devices cannot be written: {why}</source>
        <translation>la lista de equipos conocidos no se puede escribir: {why}</translation>
    </message>
    <message>
        <source>the record cannot be written as JSON: {why}</source>
        <translation>el acta no se puede escribir como JSON: {why}</translation>
    </message>
    <message>
        <source>manifest.json cannot be read: {why}</source>
        <translation>manifest.json no se puede leer: {why}</translation>
    </message>
    <message>
        <source>the record was made by a newer program</source>
        <translation>el acta la hizo un programa más nuevo</translation>
    </message>
    <message>
        <source>Verify it with that version or later</source>
        <translation>Verifíquela con esa versión o una posterior</translation>
    </message>
    <message>
        <source>the workbook cannot be made</source>
        <translation>el libro de cálculo no se puede crear</translation>
    </message>
    <message>
        <source>the workbook cannot be written: {why}</source>
        <translation>el libro de cálculo no se puede escribir: {why}</translation>
    </message>
    <message>
        <source>the import was stopped; nothing was changed</source>
        <translation>la importación se detuvo; no se cambió nada</translation>
    </message>
    <message>
        <source>the file is not a logbook</source>
        <translation>el archivo no es una bitácora</translation>
    </message>
    <message>
        <source>Choose a file made by Arcwright</source>
        <translation>Elija un archivo hecho por Arcwright</translation>
    </message>
    <message>
        <source>the logbook was written by a newer Arcwright (schema {#theirs}, this one knows {#ours}); nothing was changed</source>
        <translation>la bitácora la escribió un Arcwright más nuevo (esquema {#theirs}, este conoce {#ours}); no se cambió nada</translation>
    </message>
    <message>
        <source>Install the newer program</source>
        <translation>Instale el programa más nuevo</translation>
    </message>
    <message>
        <source>the logbook has an older schema and is opened for reading only</source>
        <translation>la bitácora tiene un esquema anterior y se abre solo para lectura</translation>
    </message>
    <message>
        <source>Open it once for writing; it is brought up to date then</source>
        <translation>Ábrala una vez para escritura; entonces se pone al día</translation>
    </message>
    <message>
        <source>a second writer was asked for without a first</source>
        <translation>se pidió un segundo escritor sin un primero</translation>
    </message>
    <message>
        <source>there is no such logbook</source>
        <translation>esa bitácora no existe</translation>
    </message>
    <message>
        <source>Make one with &quot;arcw new&quot;</source>
        <translation>Cree una con «arcw new»</translation>
    </message>
    <message>
        <source>this is a folder, not a logbook</source>
        <translation>esto es una carpeta, no una bitácora</translation>
    </message>
    <message>
        <source>the logbook may not be read</source>
        <translation>la bitácora no se puede leer</translation>
    </message>
    <message>
        <source>Ask its owner for the right to read it</source>
        <translation>Pida a su dueño el permiso de lectura</translation>
    </message>
    <message>
        <source>the logbook may not be written to</source>
        <translation>no se puede escribir en la bitácora</translation>
    </message>
    <message>
        <source>Open it for reading only, or copy it to a folder you may write to</source>
        <translation>Ábrala solo para lectura o cópiela a una carpeta en la que pueda escribir</translation>
    </message>
    <message>
        <source>the folder for the logbook does not exist</source>
        <translation>la carpeta de la bitácora no existe</translation>
    </message>
    <message>
        <source>Make the folder first</source>
        <translation>Cree primero la carpeta</translation>
    </message>
    <message>
        <source>this is not an ordinary file</source>
        <translation>no es un archivo corriente</translation>
    </message>
    <message>
        <source>the file is larger than it can be</source>
        <translation>el archivo es más grande de lo posible</translation>
    </message>
    <message>
        <source>the satchel was packed by a newer Arcwright (schema {#theirs}, this one knows {#ours}); nothing was taken in</source>
        <translation>la valija la empaquetó un Arcwright más nuevo (esquema {#theirs}, este conoce {#ours}); no se tomó nada</translation>
    </message>
    <message>
        <source>Ask for the satchel again</source>
        <translation>Pida la valija de nuevo</translation>
    </message>
    <message>
        <source>the satchel comes from a device that is not accepted yet: &quot;{name}&quot;, key {key}</source>
        <translation>la valija viene de un equipo que aún no está aceptado: «{name}», clave {key}</translation>
    </message>
    <message>
        <source>Compare the key with its owner, then accept the device; nothing was taken in</source>
        <translation>Compare la clave con su dueño y después acepte el equipo; no se tomó nada</translation>
    </message>
    <message>
        <source>the logbook file was taken away or replaced meanwhile</source>
        <translation>el archivo de la bitácora se quitó o se reemplazó entretanto</translation>
    </message>
    <message>
        <source>Take the satchel in once more; nothing is doubled</source>
        <translation>Tome la valija otra vez; nada se duplica</translation>
    </message>
    <message>
        <source>a row of the satchel is missing or out of order</source>
        <translation>una fila de la valija falta o está fuera de orden</translation>
    </message>
    <message>
        <source>the file is not a satchel this program can read</source>
        <translation>el archivo no es una valija que este programa pueda leer</translation>
    </message>
    <message>
        <source>Choose a file made by &quot;arcw pack&quot;, perhaps with a newer program</source>
        <translation>Elija un archivo hecho con «arcw pack», quizá con un programa más nuevo</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>el disco está lleno</translation>
    </message>
    <message>
        <source>Free some space and try again</source>
        <translation>Libere espacio e inténtelo de nuevo</translation>
    </message>
    <message>
        <source>Free some space and save again</source>
        <translation>Libere espacio y guarde de nuevo</translation>
    </message>
    <message>
        <source>Free some space</source>
        <translation>Libere espacio</translation>
    </message>
    <message>
        <source>there is not enough memory to seal the satchel</source>
        <translation>no hay memoria suficiente para sellar la valija</translation>
    </message>
    <message>
        <source>the label of the satchel is damaged</source>
        <translation>la etiqueta de la valija está dañada</translation>
    </message>
    <message>
        <source>there is not enough memory to open the satchel</source>
        <translation>no hay memoria suficiente para abrir la valija</translation>
    </message>
    <message>
        <source>the passphrase does not open the satchel</source>
        <translation>la frase de paso no abre la valija</translation>
    </message>
    <message>
        <source>Check the passphrase</source>
        <translation>Compruebe la frase de paso</translation>
    </message>
    <message>
        <source>the folder for temporary files cannot be written to</source>
        <translation>no se puede escribir en la carpeta de archivos temporales</translation>
    </message>
    <message>
        <source>Set TMPDIR to a folder with room</source>
        <translation>Ponga en TMPDIR una carpeta con espacio</translation>
    </message>
    <message>
        <source>the satchel cannot be written</source>
        <translation>la valija no se puede escribir</translation>
    </message>
    <message>
        <source>Check that there is room and that you may write there</source>
        <translation>Compruebe que hay espacio y que puede escribir ahí</translation>
    </message>
    <message>
        <source>the satchel could not get its name: {why}</source>
        <translation>la valija no pudo recibir su nombre: {why}</translation>
    </message>
    <message>
        <source>there is no such satchel</source>
        <translation>esa valija no existe</translation>
    </message>
    <message>
        <source>the satchel cannot be read</source>
        <translation>la valija no se puede leer</translation>
    </message>
    <message>
        <source>the satchel is sealed with a passphrase</source>
        <translation>la valija está sellada con una frase de paso</translation>
    </message>
    <message>
        <source>Give the passphrase</source>
        <translation>Dé la frase de paso</translation>
    </message>
    <message>
        <source>scenario file, {where}</source>
        <translation>archivo del escenario, {where}</translation>
    </message>
    <message>
        <source>Correct the scenario file</source>
        <translation>Corrija el archivo del escenario</translation>
    </message>
    <message>
        <source>the logbook is open for reading only</source>
        <translation>la bitácora está abierta solo para lectura</translation>
    </message>
    <message>
        <source>Close it where it is being written to, then open it again</source>
        <translation>Ciérrela donde se está escribiendo y ábrala de nuevo</translation>
    </message>
    <message>
        <source>another file was put in the place of the logbook</source>
        <translation>se puso otro archivo en el lugar de la bitácora</translation>
    </message>
    <message>
        <source>Nothing was saved; put the right file back or open it anew</source>
        <translation>No se guardó nada; vuelva a poner el archivo correcto o ábrala de nuevo</translation>
    </message>
    <message>
        <source>the logbook file was taken away; this entry is not saved</source>
        <translation>se quitó el archivo de la bitácora; esta entrada no está guardada</translation>
    </message>
    <message>
        <source>Put it back or plug the stick in again, then save once more</source>
        <translation>Devuélvalo o conecte de nuevo la memoria, y guarde otra vez</translation>
    </message>
    <message>
        <source>another program keeps replacing the logbook&apos;s files</source>
        <translation>otro programa reemplaza continuamente los archivos de la bitácora</translation>
    </message>
    <message>
        <source>Close that program; this entry may not be saved</source>
        <translation>Cierre ese programa; esta entrada puede no estar guardada</translation>
    </message>
    <message>
        <source>the key &quot;{key}&quot; is there twice</source>
        <translation>la clave «{key}» está dos veces</translation>
    </message>
    <message>
        <source>Keep one of the two</source>
        <translation>Deje una de las dos</translation>
    </message>
    <message>
        <source>this is not JSON</source>
        <translation>esto no es JSON</translation>
    </message>
    <message>
        <source>Check the brackets, commas and quotes there</source>
        <translation>Revise ahí llaves, comas y comillas</translation>
    </message>
    <message>
        <source>a number is beyond every range</source>
        <translation>un número está fuera de todo margen</translation>
    </message>
    <message>
        <source>Correct the number</source>
        <translation>Corrija el número</translation>
    </message>
    <message>
        <source>the check was stopped</source>
        <translation>la revisión se detuvo</translation>
    </message>
    <message>
        <source>Take a backup that verifies, or rescue what is readable into a new logbook</source>
        <translation>Tome una copia de seguridad que se verifique, o rescate lo legible a una bitácora nueva</translation>
    </message>
    <message>
        <source>the folder of the logbook cannot be written to</source>
        <translation>no se puede escribir en la carpeta de la bitácora</translation>
    </message>
    <message>
        <source>the logbook cannot be opened: {why}</source>
        <translation>la bitácora no se puede abrir: {why}</translation>
    </message>
    <message>
        <source>another program writes into this logbook</source>
        <translation>otro programa escribe en esta bitácora</translation>
    </message>
    <message>
        <source>another program writes into this logbook (process {#id})</source>
        <translation>otro programa escribe en esta bitácora (proceso {#id})</translation>
    </message>
    <message>
        <source>Close it there, or open the logbook for reading only</source>
        <translation>Ciérrela allí o abra la bitácora solo para lectura</translation>
    </message>
    <message>
        <source>the logbook&apos;s lock file keeps changing</source>
        <translation>el archivo de bloqueo de la bitácora cambia continuamente</translation>
    </message>
    <message>
        <source>no font is installed, so the pages would be empty boxes</source>
        <translation>no hay ninguna fuente instalada, así que las páginas serían cuadros vacíos</translation>
    </message>
    <message>
        <source>Install fonts-b612 or fonts-dejavu-core</source>
        <translation>Instale fonts-b612 o fonts-dejavu-core</translation>
    </message>
    <message>
        <source>the pages cannot be written: {why}</source>
        <translation>las páginas no se pueden escribir: {why}</translation>
    </message>
    <message>
        <source>the stored chart state is of another version</source>
        <translation>el estado guardado de los gráficos es de otra versión</translation>
    </message>
    <message>
        <source>the stored chart state cannot be read</source>
        <translation>el estado guardado de los gráficos no se puede leer</translation>
    </message>
    <message>
        <source>analyse the whole logbook again</source>
        <translation>analice de nuevo toda la bitácora</translation>
    </message>
    <message>
        <source>{#loss} dB is more than any splicer shows. Type the loss again.</source>
        <translation>{#loss} dB es más de lo que muestra cualquier empalmadora. Escriba la pérdida de nuevo.</translation>
    </message>
    <message>
        <source>{#loss} dB is unusual. Enter again if the splicer shows it</source>
        <translation>{#loss} dB no es usual. Pulse Intro otra vez si la empalmadora lo muestra</translation>
    </message>
    <message>
        <source>{#loss} dB is unusual. Enter again if the splicer shows it.</source>
        <translation>{#loss} dB no es usual. Pulse Intro otra vez si la empalmadora lo muestra.</translation>
    </message>
    <message>
        <source>{#loss} dB is unusual. Enter again if the splicer shows it, or type {#other}</source>
        <translation>{#loss} dB no es usual. Pulse Intro otra vez si la empalmadora lo muestra, o escriba {#other}</translation>
    </message>
    <message>
        <source>{#loss} dB is unusual. Enter again if the splicer shows it, or type {#other}.</source>
        <translation>{#loss} dB no es usual. Pulse Intro otra vez si la empalmadora lo muestra, o escriba {#other}.</translation>
    </message>
    <message>
        <source>A splicer never estimates a negative loss. Type the loss again.</source>
        <translation>Una empalmadora nunca estima una pérdida negativa. Escriba la pérdida de nuevo.</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a number. Type the digits of the loss.</source>
        <translation>«{text}» no es un número. Escriba las cifras de la pérdida.</translation>
    </message>
    <message>
        <source>Two decimal points. Type the loss again.</source>
        <translation>Dos signos decimales. Escriba la pérdida de nuevo.</translation>
    </message>
    <message>
        <source>That is more than any splicer shows. Type the loss again.</source>
        <translation>Es más de lo que muestra cualquier empalmadora. Escriba la pérdida de nuevo.</translation>
    </message>
    <message>
        <source>A loss has at most three places, 0.001 dB. Type it again.</source>
        <translation>Una pérdida tiene como mucho tres decimales, 0,001 dB. Escríbala de nuevo.</translation>
    </message>
    <message>
        <source>what is typed is not saved yet</source>
        <translation>lo escrito aún no está guardado</translation>
    </message>
    <message>
        <source>Enter saves it, Esc drops it</source>
        <translation>Intro lo guarda, Esc lo borra</translation>
    </message>
    <message>
        <source>no loss is typed</source>
        <translation>no hay ninguna pérdida escrita</translation>
    </message>
    <message>
        <source>Type the digits first</source>
        <translation>Escriba primero las cifras</translation>
    </message>
    <message>
        <source>a correction is saved on its own</source>
        <translation>una corrección se guarda por separado</translation>
    </message>
    <message>
        <source>Press Enter</source>
        <translation>Pulse Intro</translation>
    </message>
    <message>
        <source>this is the last fibre here</source>
        <translation>esta es la última fibra aquí</translation>
    </message>
    <message>
        <source>Enter saves them all</source>
        <translation>Intro las guarda todas</translation>
    </message>
    <message>
        <source>{#count} values, but only {#left} fibres are left here</source>
        <translation>{#count} valores, pero aquí solo quedan {#left} fibras</translation>
    </message>
    <message>
        <source>Nothing was taken</source>
        <translation>No se tomó nada</translation>
    </message>
    <message>
        <source>there is no fibre to enter</source>
        <translation>no hay ninguna fibra que anotar</translation>
    </message>
    <message>
        <source>Choose a job and a closure first</source>
        <translation>Elija primero una obra y una caja</translation>
    </message>
    <message>
        <source>Type the digits, then Enter</source>
        <translation>Escriba las cifras y después Intro</translation>
    </message>
    <message>
        <source>a splice over the limit is kept only with a note</source>
        <translation>un empalme sobre el límite solo se conserva con una nota</translation>
    </message>
    <message>
        <source>Say why it is kept</source>
        <translation>Diga por qué se conserva</translation>
    </message>
    <message>
        <source>what is typed cannot be kept with a note</source>
        <translation>lo escrito no se puede conservar con una nota</translation>
    </message>
    <message>
        <source>A note is for the last allowed attempt, over the limit and below the ceiling</source>
        <translation>La nota es para el último intento permitido, sobre el límite y bajo el techo</translation>
    </message>
    <message>
        <source>there is no splice to keep</source>
        <translation>no hay ningún empalme que conservar</translation>
    </message>
    <message>
        <source>a splice over the ceiling of {#ceiling} dB is never kept</source>
        <translation>un empalme sobre el techo de {#ceiling} dB nunca se conserva</translation>
    </message>
    <message>
        <source>the rule asks for {#attempts} attempts before a high splice is kept, this was number {#number}</source>
        <translation>la regla pide {#attempts} intentos antes de conservar un empalme alto; este fue el número {#number}</translation>
    </message>
    <message>
        <source>Re-splice it</source>
        <translation>Repita el empalme</translation>
    </message>
    <message>
        <source>nothing here is over the limit</source>
        <translation>nada aquí está sobre el límite</translation>
    </message>
    <message>
        <source>Go on with the next fibre</source>
        <translation>Siga con la fibra siguiente</translation>
    </message>
    <message>
        <source>this fibre has no reading to void</source>
        <translation>esta fibra no tiene lectura que anular</translation>
    </message>
    <message>
        <source>Choose one with the arrow keys</source>
        <translation>Elija una con las flechas</translation>
    </message>
    <message>
        <source>a reading is voided only with a reason</source>
        <translation>una lectura solo se anula con un motivo</translation>
    </message>
    <message>
        <source>Say why</source>
        <translation>Diga por qué</translation>
    </message>
    <message>
        <source>this fibre has no splice yet</source>
        <translation>esta fibra aún no tiene empalme</translation>
    </message>
    <message>
        <source>Type its loss</source>
        <translation>Escriba su pérdida</translation>
    </message>
    <message>
        <source>not saved; what you typed is still here</source>
        <translation>no se guardó; lo que escribió sigue aquí</translation>
    </message>
    <message>
        <source>not saved; this step is still here</source>
        <translation>no se guardó; este paso sigue aquí</translation>
    </message>
    <message>
        <source>not saved; your text is still here</source>
        <translation>no se guardó; su texto sigue aquí</translation>
    </message>
    <message>
        <source>the record was not saved</source>
        <translation>el registro no se guardó</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Inténtelo de nuevo</translation>
    </message>
    <message>
        <source>Press Enter to try again</source>
        <translation>Pulse Intro para intentarlo de nuevo</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a usual loss</source>
        <translation>«{text}» no es una pérdida usual</translation>
    </message>
    <message>
        <source>value {#number}</source>
        <translation>valor {#number}</translation>
    </message>
    <message>
        <source>Nothing was taken; correct it and paste again</source>
        <translation>No se tomó nada; corríjalo y péguelo de nuevo</translation>
    </message>
    <message>
        <source>there is no loss in the text</source>
        <translation>no hay ninguna pérdida en el texto</translation>
    </message>
    <message>
        <source>Copy the values first</source>
        <translation>Copie primero los valores</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a fibre number</source>
        <translation>«{text}» no es un número de fibra</translation>
    </message>
    <message>
        <source>fibre numbers run from 1 to 6912, not {text}</source>
        <translation>los números de fibra van de 1 a 6912, no {text}</translation>
    </message>
    <message>
        <source>a fibre number is missing</source>
        <translation>falta un número de fibra</translation>
    </message>
    <message>
        <source>more than 6912 fibres in one list</source>
        <translation>más de 6912 fibras en una lista</translation>
    </message>
    <message>
        <source>something follows &quot;straight&quot;; parts are separated by a semicolon</source>
        <translation>hay algo detrás de «straight»; las partes se separan con punto y coma</translation>
    </message>
    <message>
        <source>two instructions in one part; parts are separated by a semicolon</source>
        <translation>dos instrucciones en una parte; las partes se separan con punto y coma</translation>
    </message>
    <message>
        <source>side A has {#a} fibres and side B {#b}</source>
        <translation>el lado A tiene {#a} fibras y el lado B {#b}</translation>
    </message>
    <message>
        <source>fibre {#number} of side A is planned twice</source>
        <translation>la fibra {#number} del lado A está prevista dos veces</translation>
    </message>
    <message>
        <source>fibre {#number} of side B is planned twice</source>
        <translation>la fibra {#number} del lado B está prevista dos veces</translation>
    </message>
    <message>
        <source>a column is missing</source>
        <translation>falta una columna</translation>
    </message>
    <message>
        <source>the header has no fibre_a and fibre_b</source>
        <translation>el encabezado no tiene fibre_a ni fibre_b</translation>
    </message>
    <message>
        <source>Begin the file with the line fibre_a,fibre_b</source>
        <translation>Empiece el archivo con la línea fibre_a,fibre_b</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>el archivo está vacío</translation>
    </message>
    <message>
        <source>Write it like &quot;1-144 straight&quot; or &quot;1-12 to 25-36; 13 to 40&quot;</source>
        <translation>Escríbalo como «1-144 straight» o «1-12 to 25-36; 13 to 40»</translation>
    </message>
    <message>
        <source>part {#number}, &quot;{text}&quot;</source>
        <translation>parte {#number}, «{text}»</translation>
    </message>
    <message>
        <source>part {#number}, &quot;{text}&quot;, side A</source>
        <translation>parte {#number}, «{text}», lado A</translation>
    </message>
    <message>
        <source>part {#number}, &quot;{text}&quot;, side B</source>
        <translation>parte {#number}, «{text}», lado B</translation>
    </message>
    <message>
        <source>line {#number}</source>
        <translation>línea {#number}</translation>
    </message>
    <message>
        <source>line {#number}, {column}</source>
        <translation>línea {#number}, {column}</translation>
    </message>
    <message>
        <source>side A</source>
        <translation>lado A</translation>
    </message>
    <message>
        <source>side B</source>
        <translation>lado B</translation>
    </message>
    <message>
        <source>cable A has {#have} fibres, the plan names fibre {#named}</source>
        <translation>el cable A tiene {#have} fibras, el plan nombra la fibra {#named}</translation>
    </message>
    <message>
        <source>cable B has {#have} fibres, the plan names fibre {#named}</source>
        <translation>el cable B tiene {#have} fibras, el plan nombra la fibra {#named}</translation>
    </message>
    <message>
        <source>the plan has {#splices} splices and the trays hold {#places}</source>
        <translation>el plan tiene {#splices} empalmes y en las bandejas caben {#places}</translation>
    </message>
    <message>
        <source>trays</source>
        <translation>bandejas</translation>
    </message>
    <message>
        <source>Add trays or plan fewer splices</source>
        <translation>Añada bandejas o prevea menos empalmes</translation>
    </message>
    <message>
        <source>there is no colour order &quot;{name}&quot;</source>
        <translation>no existe el orden de colores «{name}»</translation>
    </message>
    <message>
        <source>Take one of: {names}</source>
        <translation>Tome uno de: {names}</translation>
    </message>
    <message>
        <source>colour order</source>
        <translation>orden de colores</translation>
    </message>
    <message>
        <source>the time &quot;{text}&quot; cannot be read: {why}</source>
        <translation>la hora «{text}» no se puede leer: {why}</translation>
    </message>
    <message>
        <source>Write it like 2031-03-03T07:00:00Z or 2031-03-03T08:00:00+01:00</source>
        <translation>Escríbala como 2031-03-03T07:00:00Z o 2031-03-03T08:00:00+01:00</translation>
    </message>
    <message>
        <source>the job needs a label</source>
        <translation>la obra necesita una etiqueta</translation>
    </message>
    <message>
        <source>the closure needs a label</source>
        <translation>la caja necesita una etiqueta</translation>
    </message>
    <message>
        <source>there is a job {label} already</source>
        <translation>ya existe una obra {label}</translation>
    </message>
    <message>
        <source>this job has a closure {label} already</source>
        <translation>esta obra ya tiene una caja {label}</translation>
    </message>
    <message>
        <source>Choose it above to add a closure</source>
        <translation>Elíjala arriba para añadir una caja</translation>
    </message>
    <message>
        <source>{field} must be a number between {#least} and {#most}</source>
        <translation>{field} debe ser un número entre {#least} y {#most}</translation>
    </message>
    <message>
        <source>There is no splicer in the kit</source>
        <translation>No hay ninguna empalmadora en el equipo</translation>
    </message>
    <message>
        <source>Add one on the Kit screen, F3</source>
        <translation>Añada una en la pantalla Equipo, F3</translation>
    </message>
    <message>
        <source>no splicer is chosen</source>
        <translation>no hay ninguna empalmadora elegida</translation>
    </message>
    <message>
        <source>set-up</source>
        <translation>preparación</translation>
    </message>
    <message>
        <source>Choose one</source>
        <translation>Elija una</translation>
    </message>
    <message>
        <source>there is no cleaver in service to pair</source>
        <translation>no hay ninguna cortadora en servicio que asignar</translation>
    </message>
    <message>
        <source>Add a cleaver first</source>
        <translation>Añada primero una cortadora</translation>
    </message>
    <message>
        <source>there is no care card for this</source>
        <translation>no hay ficha de cuidado para esto</translation>
    </message>
    <message>
        <source>Choose another one below the list</source>
        <translation>Elija otra debajo de la lista</translation>
    </message>
    <message>
        <source>the charts cannot be written</source>
        <translation>los gráficos no se pueden escribir</translation>
    </message>
    <message>
        <source>Choose a folder you may write to, and a name that ends in .svg or .png</source>
        <translation>Elija una carpeta en la que pueda escribir y un nombre que acabe en .svg o .png</translation>
    </message>
    <message>
        <source>the folder for the pictures cannot be made</source>
        <translation>no se puede crear la carpeta de las imágenes</translation>
    </message>
    <message>
        <source>a picture cannot be written</source>
        <translation>no se puede escribir una imagen</translation>
    </message>
    <message>
        <source>Choose a folder you may write to</source>
        <translation>Elija una carpeta en la que pueda escribir</translation>
    </message>
    <message>
        <source>Look whether the disk is full</source>
        <translation>Mire si el disco está lleno</translation>
    </message>
    <message>
        <source>{#rows} rows step back in time (first: line {#line}); they were put where their time belongs</source>
        <translation>{#rows} filas retroceden en el tiempo (la primera: línea {#line}); se pusieron donde les toca</translation>
    </message>
    <message>
        <source>{#arcs} arc has fewer readings than fibres (first: line {#line})</source>
        <translation>{#arcs} arco tiene menos lecturas que fibras (el primero: línea {#line})</translation>
    </message>
    <message>
        <source>{#arcs} arcs have fewer readings than fibres (first: line {#line})</source>
        <translation>{#arcs} arcos tienen menos lecturas que fibras (el primero: línea {#line})</translation>
    </message>
    <message>
        <source>numbers are read with a decimal comma</source>
        <translation>los números se leen con coma decimal</translation>
    </message>
    <message>
        <source>the time is missing</source>
        <translation>falta la hora</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a number; in a file with commas between columns the decimal mark is a point</source>
        <translation>«{text}» no es un número; en un archivo con comas entre columnas el signo decimal es el punto</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a whole number</source>
        <translation>«{text}» no es un número entero</translation>
    </message>
    <message>
        <source>the loss is missing</source>
        <translation>falta la pérdida</translation>
    </message>
    <message>
        <source>the splicer is missing</source>
        <translation>falta la empalmadora</translation>
    </message>
    <message>
        <source>the rows of this arc do not agree: {~why}</source>
        <translation>las filas de este arco no coinciden: {~why}</translation>
    </message>
    <message>
        <source>it is there with another {column}</source>
        <translation>ya está con otro valor en {column}</translation>
    </message>
    <message>
        <source>this splice is there with another {column}</source>
        <translation>este empalme ya está con otro valor en {column}</translation>
    </message>
    <message>
        <source>another row of the file has the same splice with another {column}</source>
        <translation>otra fila del archivo tiene el mismo empalme con otro valor en {column}</translation>
    </message>
    <message>
        <source>the logbook has this arc: {~why}</source>
        <translation>la bitácora ya tiene este arco: {~why}</translation>
    </message>
    <message>
        <source>the logbook has this splice with another {column}; correct it there</source>
        <translation>la bitácora tiene este empalme con otro valor en {column}; corríjalo allí</translation>
    </message>
    <message>
        <source>Imported {#fibres} fibre splice of {#arcs} arc from {file}</source>
        <translation>Importado {#fibres} empalme de fibra de {#arcs} arco desde {file}</translation>
    </message>
    <message>
        <source>Imported {#fibres} fibre splices of {#arcs} arc from {file}</source>
        <translation>Importados {#fibres} empalmes de fibra de {#arcs} arco desde {file}</translation>
    </message>
    <message>
        <source>Imported {#fibres} fibre splices of {#arcs} arcs from {file}</source>
        <translation>Importados {#fibres} empalmes de fibra de {#arcs} arcos desde {file}</translation>
    </message>
    <message>
        <source>Imported {#count} measured loss from {file}</source>
        <translation>Importada {#count} pérdida medida desde {file}</translation>
    </message>
    <message>
        <source>Imported {#count} measured losses from {file}</source>
        <translation>Importadas {#count} pérdidas medidas desde {file}</translation>
    </message>
    <message>
        <source>Set aside {#count} row of {file}</source>
        <translation>Apartada {#count} fila de {file}</translation>
    </message>
    <message>
        <source>Set aside {#count} rows of {file}</source>
        <translation>Apartadas {#count} filas de {file}</translation>
    </message>
    <message>
        <source>the equipment is missing</source>
        <translation>falta la herramienta</translation>
    </message>
    <message>
        <source>the action &quot;{name}&quot; is not known</source>
        <translation>la acción «{name}» no se conoce</translation>
    </message>
    <message>
        <source>the fibre is missing</source>
        <translation>falta la fibra</translation>
    </message>
    <message>
        <source>the wavelength is missing or no whole number of nanometres</source>
        <translation>falta la longitud de onda o no es un número entero de nanómetros</translation>
    </message>
    <message>
        <source>the closure is missing</source>
        <translation>falta la caja</translation>
    </message>
    <message>
        <source>this measurement is there with other values; correct it there</source>
        <translation>esta medida ya está con otros valores; corríjala allí</translation>
    </message>
    <message>
        <source>the file is not UTF-8</source>
        <translation>el archivo no es UTF-8</translation>
    </message>
    <message>
        <source>the file is not UTF-8; it looks like {guess}</source>
        <translation>el archivo no es UTF-8; parece {guess}</translation>
    </message>
    <message>
        <source>Save it as UTF-8 and import that</source>
        <translation>Guárdelo como UTF-8 e importe ese archivo</translation>
    </message>
    <message>
        <source>the line is longer than 64 KiB</source>
        <translation>la línea pasa de 64 KiB</translation>
    </message>
    <message>
        <source>a quotation mark is opened and never closed</source>
        <translation>unas comillas se abren y nunca se cierran</translation>
    </message>
    <message>
        <source>a quotation mark stands where none may stand</source>
        <translation>hay unas comillas donde no puede haberlas</translation>
    </message>
    <message>
        <source>the row is not UTF-8 text</source>
        <translation>la fila no es texto UTF-8</translation>
    </message>
    <message>
        <source>read as UTF-16</source>
        <translation>leído como UTF-16</translation>
    </message>
    <message>
        <source>columns are separated by semicolons</source>
        <translation>las columnas se separan con punto y coma</translation>
    </message>
    <message>
        <source>columns are separated by tabs</source>
        <translation>las columnas se separan con tabuladores</translation>
    </message>
    <message>
        <source>the file has no column &quot;{name}&quot;; it has: {columns}</source>
        <translation>el archivo no tiene la columna «{name}»; tiene: {columns}</translation>
    </message>
    <message>
        <source>Name the column so, or give a column key</source>
        <translation>Llame así a la columna o dé una clave de columnas</translation>
    </message>
    <message>
        <source>the column &quot;{name}&quot; is there twice</source>
        <translation>la columna «{name}» está dos veces</translation>
    </message>
    <message>
        <source>Remove one of them</source>
        <translation>Quite una de ellas</translation>
    </message>
    <message>
        <source>columns that are not read: {columns}</source>
        <translation>columnas que no se leen: {columns}</translation>
    </message>
    <message>
        <source>Reading {file}</source>
        <translation>Leyendo {file}</translation>
    </message>
    <message>
        <source>not one of the first 1,000 rows can be read; the first: {~why}</source>
        <translation>ninguna de las primeras 1.000 filas se puede leer; la primera: {~why}</translation>
    </message>
    <message>
        <source>Check that this is the right file; nothing was changed</source>
        <translation>Compruebe que es el archivo correcto; no se cambió nada</translation>
    </message>
    <message>
        <source>the row has {#fields} fields, the header names {#named}</source>
        <translation>la fila tiene {#fields} campos, el encabezado nombra {#named}</translation>
    </message>
    <message>
        <source>the row has {#fields} fields, the header names {#named}; a decimal comma without quotes does that</source>
        <translation>la fila tiene {#fields} campos, el encabezado nombra {#named}; eso lo causa una coma decimal sin comillas</translation>
    </message>
    <message>
        <source>the logbook file was taken away or replaced during the import</source>
        <translation>el archivo de la bitácora se quitó o se reemplazó durante la importación</translation>
    </message>
    <message>
        <source>Import the files once more; what is known is not doubled</source>
        <translation>Importe los archivos otra vez; lo ya conocido no se duplica</translation>
    </message>
    <message>
        <source>&quot;{label}&quot; is a {~kind} in the kit, not a {~wanted}</source>
        <translation>«{label}» es una {~kind} en el equipo, no una {~wanted}</translation>
    </message>
    <message>
        <source>{label} splices {#count} fibres in one arc; the kit said {#old} and was brought up to date</source>
        <translation>{label} empalma {#count} fibras en un arco; el equipo decía {#old} y se puso al día</translation>
    </message>
    <message>
        <source>&quot;{label}&quot; is a {~kind}; {action} is not for it</source>
        <translation>«{label}» es una {~kind}; {action} no es para ella</translation>
    </message>
    <message>
        <source>there is no tool called &quot;{label}&quot; in the kit and the action does not tell its kind</source>
        <translation>no hay ninguna herramienta «{label}» en el equipo y la acción no dice de qué tipo es</translation>
    </message>
    <message>
        <source>there is no closure called &quot;{label}&quot;; import the splice log first</source>
        <translation>no existe la caja «{label}»; importe primero el registro de empalmes</translation>
    </message>
    <message>
        <source>several jobs have a closure called &quot;{label}&quot;; add a column &quot;job&quot;</source>
        <translation>varias obras tienen una caja «{label}»; añada una columna «job»</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Calibración</translation>
    </message>
    <message>
        <source>Clamps</source>
        <translation>Mordazas</translation>
    </message>
    <message>
        <source>Grooves</source>
        <translation>Ranuras</translation>
    </message>
    <message>
        <source>Lenses</source>
        <translation>Lentes</translation>
    </message>
    <message>
        <source>Pads</source>
        <translation>Almohadillas</translation>
    </message>
    <message>
        <source>Strips</source>
        <translation>Pelados</translation>
    </message>
    <message>
        <source>First entry from {device}</source>
        <translation>Primera entrada de {device}</translation>
    </message>
    <message>
        <source>Made this logbook</source>
        <translation>Creada esta bitácora</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>resultado</translation>
    </message>
    <message>
        <source>covers</source>
        <translation>incluye</translation>
    </message>
    <message>
        <source>swab ends</source>
        <translation>extremos de hisopo</translation>
    </message>
    <message>
        <source>rounds</source>
        <translation>vueltas</translation>
    </message>
    <message>
        <source>reached</source>
        <translation>logrado</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>no logrado</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>A reading of fibre {~fibre} was corrected after the fact</source>
        <translation>Una lectura de la fibra {~fibre} se corrigió después</translation>
    </message>
    <message>
        <source>A reading of fibre {~fibre} was corrected after the fact: {note}</source>
        <translation>Una lectura de la fibra {~fibre} se corrigió después: {note}</translation>
    </message>
    <message>
        <source>{#count} first attempts of fibre {~fibre} are written down; the latest counts</source>
        <translation>hay {#count} primeros intentos anotados de la fibra {~fibre}; cuenta el último</translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB after 1 attempt, limit {#limit} dB</source>
        <translation>Fibra {~fibre}: {#loss} dB tras 1 intento, límite {#limit} dB</translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB after {#attempts} attempts, limit {#limit} dB</source>
        <translation>Fibra {~fibre}: {#loss} dB tras {#attempts} intentos, límite {#limit} dB</translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB after 1 attempt, limit {#limit} dB; {note}</source>
        <translation>Fibra {~fibre}: {#loss} dB tras 1 intento, límite {#limit} dB; {note}</translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB after 1 attempt, limit {#limit} dB; kept: {note}</source>
        <translation>Fibra {~fibre}: {#loss} dB tras 1 intento, límite {#limit} dB; conservado: {note}</translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB after {#attempts} attempts, limit {#limit} dB; {note}</source>
        <translation>Fibra {~fibre}: {#loss} dB tras {#attempts} intentos, límite {#limit} dB; {note}</translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB after {#attempts} attempts, limit {#limit} dB; kept: {note}</source>
        <translation>Fibra {~fibre}: {#loss} dB tras {#attempts} intentos, límite {#limit} dB; conservado: {note}</translation>
    </message>
    <message>
        <source>Groove {#groove}: {#loss} dB after {#attempts} attempts, limit {#limit} dB; {note}</source>
        <translation>Ranura {#groove}: {#loss} dB tras {#attempts} intentos, límite {#limit} dB; {note}</translation>
    </message>
    <message>
        <source>Groove {#groove}: {#loss} dB after {#attempts} attempts, limit {#limit} dB; kept: {note}</source>
        <translation>Ranura {#groove}: {#loss} dB tras {#attempts} intentos, límite {#limit} dB; conservado: {note}</translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB two-way mean after 1 attempt, limit {#limit} dB</source>
        <translation>Fibra {~fibre}: {#loss} dB de media en dos sentidos tras 1 intento, límite {#limit} dB</translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB two-way mean after {#attempts} attempts, limit {#limit} dB</source>
        <translation>Fibra {~fibre}: {#loss} dB de media en dos sentidos tras {#attempts} intentos, límite {#limit} dB</translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB two-way mean after 1 attempt, limit {#limit} dB; {note}</source>
        <translation>Fibra {~fibre}: {#loss} dB de media en dos sentidos tras 1 intento, límite {#limit} dB; {note}</translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB two-way mean after 1 attempt, limit {#limit} dB; kept: {note}</source>
        <translation>Fibra {~fibre}: {#loss} dB de media en dos sentidos tras 1 intento, límite {#limit} dB; conservado: {note}</translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB two-way mean after {#attempts} attempts, limit {#limit} dB; {note}</source>
        <translation>Fibra {~fibre}: {#loss} dB de media en dos sentidos tras {#attempts} intentos, límite {#limit} dB; {note}</translation>
    </message>
    <message>
        <source>Fibre {~fibre}: {#loss} dB two-way mean after {#attempts} attempts, limit {#limit} dB; kept: {note}</source>
        <translation>Fibra {~fibre}: {#loss} dB de media en dos sentidos tras {#attempts} intentos, límite {#limit} dB; conservado: {note}</translation>
    </message>
    <message>
        <source>{#number} {~colour}</source>
        <translation>{#number} {~colour}</translation>
    </message>
    <message>
        <source>{#number} {~colour} with tracer</source>
        <translation>{#number} {~colour} con marca</translation>
    </message>
    <message>
        <source>{#number} {~colour}, unit {#unit}</source>
        <translation>{#number} {~colour}, unidad {#unit}</translation>
    </message>
    <message>
        <source>{#number} {~colour} with tracer, unit {#unit}</source>
        <translation>{#number} {~colour} con marca, unidad {#unit}</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>naranja</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>marrón</translation>
    </message>
    <message>
        <source>slate</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanco</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rojo</translation>
    </message>
    <message>
        <source>black</source>
        <translation>negro</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>violet</source>
        <translation>violeta</translation>
    </message>
    <message>
        <source>rose</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>aqua</source>
        <translation>aguamarina</translation>
    </message>
    <message>
        <source>turquoise</source>
        <translation>turquesa</translation>
    </message>
    <message>
        <source>natural</source>
        <translation>natural</translation>
    </message>
    <message>
        <source>lime</source>
        <translation>lima</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosado</translation>
    </message>
    <message>
        <source>unknown colour</source>
        <translation>color desconocido</translation>
    </message>
    <message>
        <source>groove kit: soft brush, stiff brush, cleaning fluid</source>
        <translation>juego para ranuras: cepillo blando, cepillo duro, líquido de limpieza</translation>
    </message>
    <message>
        <source>stripper brush</source>
        <translation>cepillo para peladora</translation>
    </message>
    <message>
        <source>one lasts about 1 run; {#ever} in the logbook, about {#ahead} in the next {#days} days</source>
        <translation>cada uno dura 1 vez; {#ever} en la bitácora, unas {#ahead} en los próximos {#days} días</translation>
    </message>
    <message>
        <source>one lasts about {#lasts} runs; {#ever} in the logbook, about {#ahead} in the next {#days} days</source>
        <translation>cada uno dura unas {#lasts} veces; {#ever} en la bitácora, unas {#ahead} en los próximos {#days} días</translation>
    </message>
    <message>
        <source>for about 1 care in the next {#days} days, as many as the last {#days} days had or called for</source>
        <translation>para 1 cuidado en los próximos {#days} días, como tuvieron o pidieron los últimos {#days} días</translation>
    </message>
    <message>
        <source>for about {#count} cares in the next {#days} days, as many as the last {#days} days had or called for</source>
        <translation>para unos {#count} cuidados en los próximos {#days} días, como tuvieron o pidieron los últimos {#days} días</translation>
    </message>
    <message>
        <source>{~ribbon} (cable {label}) sheds fragments at every strip</source>
        <translation>{~ribbon} (cable {label}): suelta fragmentos en cada pelado</translation>
    </message>
    <message>
        <source>{~ribbon} (cable {label}) shed fragments at every strip</source>
        <translation>{~ribbon} (cable {label}): suelta fragmentos en cada pelado</translation>
    </message>
    <message>
        <source>{~ribbon} sheds fragments at every strip</source>
        <translation>{~ribbon}: suelta fragmentos en cada pelado</translation>
    </message>
    <message>
        <source>{~ribbon} shed fragments at every strip</source>
        <translation>{~ribbon}: suelta fragmentos en cada pelado</translation>
    </message>
    <message>
        <source>flat ribbon</source>
        <translation>cinta plana</translation>
    </message>
    <message>
        <source>web-type ribbon</source>
        <translation>cinta de tipo malla</translation>
    </message>
    <message>
        <source>ribbonised loose tubes</source>
        <translation>tubos holgados encintados</translation>
    </message>
    <message>
        <source>1 such strip since the last clean, by the crew; after each strip ({~source})</source>
        <translation>1 pelado así desde la última limpieza, por la cuadrilla; después de cada pelado ({~source})</translation>
    </message>
    <message>
        <source>{#count} such strips since the last clean, by the crew; after each strip ({~source})</source>
        <translation>{#count} pelados así desde la última limpieza, por la cuadrilla; después de cada pelado ({~source})</translation>
    </message>
    <message>
        <source>a mass splicer is calibrated with as many fibres, and of the type, as it is to splice (common practice)</source>
        <translation>una empalmadora de cinta se calibra con tantas fibras, y del tipo, como va a empalmar (práctica común)</translation>
    </message>
    <message>
        <source>1 fibre at once, no mode named, from {@when} on; the arc was calibrated for {~made}</source>
        <translation>1 fibra a la vez, sin modo, desde el {@when}; el arco se calibró para {~made}</translation>
    </message>
    <message>
        <source>{#count} fibres at once, no mode named, from {@when} on; the arc was calibrated for {~made}</source>
        <translation>{#count} fibras a la vez, sin modo, desde el {@when}; el arco se calibró para {~made}</translation>
    </message>
    <message>
        <source>1 fibre at once, mode {mode}, from {@when} on; the arc was calibrated for {~made}</source>
        <translation>1 fibra a la vez, modo {mode}, desde el {@when}; el arco se calibró para {~made}</translation>
    </message>
    <message>
        <source>{#count} fibres at once, mode {mode}, from {@when} on; the arc was calibrated for {~made}</source>
        <translation>{#count} fibras a la vez, modo {mode}, desde el {@when}; el arco se calibró para {~made}</translation>
    </message>
    <message>
        <source>1 fibre of {type}</source>
        <translation>1 fibra de {type}</translation>
    </message>
    <message>
        <source>{#count} fibres of {type}</source>
        <translation>{#count} fibras de {type}</translation>
    </message>
    <message>
        <source>not in the logbook</source>
        <translation>no está en la bitácora</translation>
    </message>
    <message>
        <source>not in the logbook since &quot;{~care}&quot; of {@when}</source>
        <translation>no está en la bitácora desde «{~care}» del {@when}</translation>
    </message>
    <message>
        <source>not in the logbook since the signal of {@when}, which asks for it first: {~why}</source>
        <translation>no está en la bitácora desde la señal del {@when}, que lo pide primero: {~why}</translation>
    </message>
    <message>
        <source>{~care}; before gentler care</source>
        <translation>{~care}; antes de un cuidado más suave</translation>
    </message>
    <message>
        <source>{~care}; before gentler care: {reason}</source>
        <translation>{~care}; antes de un cuidado más suave: {reason}</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>fecha y hora</translation>
    </message>
    <message>
        <source>estimated loss</source>
        <translation>pérdida estimada</translation>
    </message>
    <message>
        <source>groove number</source>
        <translation>número de ranura</translation>
    </message>
    <message>
        <source>fibres in the arc</source>
        <translation>fibras en el arco</translation>
    </message>
    <message>
        <source>arc counter of the splicer</source>
        <translation>contador de arcos de la empalmadora</translation>
    </message>
    <message>
        <source>fibre on side A</source>
        <translation>fibra del lado A</translation>
    </message>
    <message>
        <source>fibre on side B</source>
        <translation>fibra del lado B</translation>
    </message>
    <message>
        <source>splice mode</source>
        <translation>modo de empalme</translation>
    </message>
    <message>
        <source>cleave angle left, degrees</source>
        <translation>ángulo de corte izquierdo, grados</translation>
    </message>
    <message>
        <source>cleave angle right, degrees</source>
        <translation>ángulo de corte derecho, grados</translation>
    </message>
    <message>
        <source>who spliced</source>
        <translation>quién empalmó</translation>
    </message>
    <message>
        <source>tool</source>
        <translation>herramienta</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>qué se hizo</translation>
    </message>
    <message>
        <source>detail</source>
        <translation>detalle</translation>
    </message>
    <message>
        <source>who did it</source>
        <translation>quién lo hizo</translation>
    </message>
    <message>
        <source>loss from A to B</source>
        <translation>pérdida de A a B</translation>
    </message>
    <message>
        <source>loss from B to A</source>
        <translation>pérdida de B a A</translation>
    </message>
    <message>
        <source>tables cannot be read here</source>
        <translation>aquí no se pueden leer tablas</translation>
    </message>
    <message>
        <source>there is no column &quot;{name}&quot; of ours</source>
        <translation>no hay una columna nuestra «{name}»</translation>
    </message>
    <message>
        <source>&quot;header&quot; is not a list</source>
        <translation>«header» no es una lista</translation>
    </message>
    <message>
        <source>the file cannot be read any further</source>
        <translation>el archivo no se puede seguir leyendo</translation>
    </message>
    <message>
        <source>the column key has no name</source>
        <translation>la clave de columnas no tiene nombre</translation>
    </message>
    <message>
        <source>Give it one, like &quot;Crew B&quot;</source>
        <translation>Dele uno, como «Cuadrilla B»</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>dejada fuera</translation>
    </message>
    <message>
        <source>mended</source>
        <translation>corregida</translation>
    </message>
    <message>
        <source>Hold overridden by {who}</source>
        <translation>Alto levantado por {who}</translation>
    </message>
    <message>
        <source>Hold overridden by {who}: {reason}</source>
        <translation>Alto levantado por {who}: {reason}</translation>
    </message>
    <message>
        <source>Exception {key} accepted</source>
        <translation>Excepción {key} aceptada</translation>
    </message>
    <message>
        <source>Exception {key} rejected</source>
        <translation>Excepción {key} rechazada</translation>
    </message>
    <message>
        <source>Exception {key} accepted by {who}: {reason}</source>
        <translation>Excepción {key} aceptada por {who}: {reason}</translation>
    </message>
    <message>
        <source>Exception {key} rejected by {who}: {reason}</source>
        <translation>Excepción {key} rechazada por {who}: {reason}</translation>
    </message>
    <message>
        <source>Closeout record {#number} issued by {who}</source>
        <translation>Acta de cierre {#number} emitida por {who}</translation>
    </message>
    <message>
        <source>Closeout record {#number} issued by {who}, supersedes {#old}</source>
        <translation>Acta de cierre {#number} emitida por {who}, sustituye a la {#old}</translation>
    </message>
    <message>
        <source>Column key {name} saved</source>
        <translation>Clave de columnas {name} guardada</translation>
    </message>
    <message>
        <source>Column key {name} removed</source>
        <translation>Clave de columnas {name} quitada</translation>
    </message>
    <message>
        <source>Set-aside row opened again</source>
        <translation>Fila apartada abierta de nuevo</translation>
    </message>
    <message>
        <source>Set-aside row mended</source>
        <translation>Fila apartada corregida</translation>
    </message>
    <message>
        <source>Set-aside row left out</source>
        <translation>Fila apartada dejada fuera</translation>
    </message>
    <message>
        <source>Put aside: {~text}</source>
        <translation>Apartado: {~text}</translation>
    </message>
    <message>
        <source>Kept: {~text}</source>
        <translation>Conservado: {~text}</translation>
    </message>
    <message>
        <source>Brought back: {~text}</source>
        <translation>Recuperado: {~text}</translation>
    </message>
    <message>
        <source>Split: attempt {#attempt} of fibre {#fibre} belongs to fibre {#other}</source>
        <translation>Separado: el intento {#attempt} de la fibra {#fibre} es de la fibra {#other}</translation>
    </message>
    <message>
        <source>Split: attempt {#attempt} of fibre {#fibre} belongs to fibre {#other}, with its whole ribbon</source>
        <translation>Separado: el intento {#attempt} de la fibra {#fibre} es de la fibra {#other}, con toda su cinta</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>deshecho</translation>
    </message>
    <message>
        <source>this program does not hand over or keep copies</source>
        <translation>este programa no entrega datos ni guarda copias</translation>
    </message>
    <message>
        <source>the record was edited or settled meanwhile</source>
        <translation>el registro se editó o se resolvió entretanto</translation>
    </message>
    <message>
        <source>Look at the list again</source>
        <translation>Mire la lista otra vez</translation>
    </message>
    <message>
        <source>Open it again and look at the list once more</source>
        <translation>Ábrala de nuevo y mire la lista otra vez</translation>
    </message>
    <message>
        <source>the logbook is damaged ({~what}) and is open for reading only</source>
        <translation>la bitácora está dañada ({~what}) y está abierta solo para lectura</translation>
    </message>
    <message>
        <source>Restore a backup, or rescue what is readable into a new logbook</source>
        <translation>Restaure una copia de seguridad o rescate lo legible a una bitácora nueva</translation>
    </message>
    <message>
        <source>a page cannot be read</source>
        <translation>una página no se puede leer</translation>
    </message>
    <message>
        <source>a page could not be read</source>
        <translation>una página no se pudo leer</translation>
    </message>
    <message>
        <source>a page could not be read while writing</source>
        <translation>una página no se pudo leer al escribir</translation>
    </message>
    <message>
        <source>the file is cut off</source>
        <translation>el archivo está cortado</translation>
    </message>
    <message>
        <source>the end of the journal cannot be read</source>
        <translation>el final del diario no se puede leer</translation>
    </message>
    <message>
        <source>a part of the logbook file is damaged</source>
        <translation>una parte del archivo de la bitácora está dañada</translation>
    </message>
    <message>
        <source>{#there} {~what} can be read</source>
        <translation>se pueden leer {#there} {~what}</translation>
    </message>
    <message>
        <source>{#there} of {#all} {~what} can be read</source>
        <translation>se pueden leer {#there} de {#all} {~what}</translation>
    </message>
    <message>
        <source>The logbook is open for reading only: another program writes into it, or its folder cannot be written to.</source>
        <translation>La bitácora está abierta solo para lectura: otro programa escribe en ella o no se puede escribir en su carpeta.</translation>
    </message>
    <message>
        <source>the folder for backups cannot be made: {why}</source>
        <translation>la carpeta de las copias de seguridad no se puede crear: {why}</translation>
    </message>
    <message>
        <source>Choose another folder in the settings</source>
        <translation>Elija otra carpeta en los ajustes</translation>
    </message>
    <message>
        <source>a satchel of one job cannot be packed yet</source>
        <translation>aún no se puede empaquetar una valija de una sola obra</translation>
    </message>
    <message>
        <source>the satchel comes from a device that is not accepted yet and cannot be kept: {~why}</source>
        <translation>la valija viene de un equipo que aún no está aceptado y no se puede guardar: {~why}</translation>
    </message>
    <message>
        <source>Make room, or accept the device and take the satchel in again</source>
        <translation>Haga sitio, o acepte el equipo y tome la valija de nuevo</translation>
    </message>
    <message>
        <source>this file is not a satchel that waits</source>
        <translation>este archivo no es una valija en espera</translation>
    </message>
    <message>
        <source>the satchel is gone already</source>
        <translation>la valija ya no está</translation>
    </message>
    <message>
        <source>this is not the key of a device</source>
        <translation>esto no es la clave de un equipo</translation>
    </message>
    <message>
        <source>&quot;{~one}&quot; ({device}) shows</source>
        <translation>se muestra «{~one}» ({device})</translation>
    </message>
    <message>
        <source>&quot;{~one}&quot; ({device}) shows; &quot;{~other}&quot; ({other}) was written without knowing of it</source>
        <translation>se muestra «{~one}» ({device}); «{~other}» ({other}) se escribió sin conocerla</translation>
    </message>
    <message>
        <source>this is not a JPEG or PNG picture</source>
        <translation>esto no es una imagen JPEG o PNG</translation>
    </message>
    <message>
        <source>Choose a photo, or write a note</source>
        <translation>Elija una foto o escriba una nota</translation>
    </message>
    <message>
        <source>Choose another</source>
        <translation>Elija otra</translation>
    </message>
    <message>
        <source>the file is larger than {#mb} MB</source>
        <translation>el archivo pasa de {#mb} MB</translation>
    </message>
    <message>
        <source>Take the photo smaller and add it again</source>
        <translation>Haga la foto más pequeña y añádala de nuevo</translation>
    </message>
    <message>
        <source>the search was stopped; nothing was changed</source>
        <translation>la búsqueda se detuvo; no se cambió nada</translation>
    </message>
    <message>
        <source>moved from fibre {fibre}</source>
        <translation>movido desde la fibra {fibre}</translation>
    </message>
    <message>
        <source>moved to fibre {fibre}</source>
        <translation>movido a la fibra {fibre}</translation>
    </message>
    <message>
        <source>the clock stepped back</source>
        <translation>el reloj retrocedió</translation>
    </message>
    <message>
        <source>this fibre has no attempts to take apart</source>
        <translation>esta fibra no tiene intentos que separar</translation>
    </message>
    <message>
        <source>fibre {#fibre} has no attempt {#attempt}</source>
        <translation>la fibra {#fibre} no tiene intento {#attempt}</translation>
    </message>
    <message>
        <source>Its last one is {#attempt}</source>
        <translation>El último es {#attempt}</translation>
    </message>
    <message>
        <source>fibre {#fibre} is not in this closure</source>
        <translation>la fibra {#fibre} no está en esta caja</translation>
    </message>
    <message>
        <source>the reading is of this fibre already</source>
        <translation>la lectura ya es de esta fibra</translation>
    </message>
    <message>
        <source>Type the number of the fibre it belongs to</source>
        <translation>Escriba el número de la fibra a la que pertenece</translation>
    </message>
    <message>
        <source>that ribbon has fewer fibres than this arc</source>
        <translation>esa cinta tiene menos fibras que este arco</translation>
    </message>
    <message>
        <source>Void the arc and type it again there</source>
        <translation>Anule el arco y escríbalo de nuevo allí</translation>
    </message>
    <message>
        <source>this fibre has no such attempt</source>
        <translation>esta fibra no tiene ese intento</translation>
    </message>
    <message>
        <source>Look at its attempts again</source>
        <translation>Mire otra vez sus intentos</translation>
    </message>
    <message>
        <source>one arc cannot splice a fibre twice</source>
        <translation>un arco no puede empalmar una fibra dos veces</translation>
    </message>
    <message>
        <source>Move or void the reading that fibre has of the same arc first</source>
        <translation>Mueva o anule antes la lectura que esa fibra tiene del mismo arco</translation>
    </message>
    <message>
        <source>1 such strip since the last clean, by the crew</source>
        <translation>1 pelado así desde la última limpieza, del equipo</translation>
    </message>
    <message>
        <source>{#count} such strips since the last clean, by the crew</source>
        <translation>{#count} pelados así desde la última limpieza, del equipo</translation>
    </message>
    <message>
        <source>for about 1 care in the next {#days} days, as many as the last {#before} days had or called for</source>
        <translation>para cerca de 1 cuidado en los próximos {#days} días, como los últimos {#before} días tuvieron o pedían</translation>
    </message>
    <message>
        <source>for about {#count} cares in the next {#days} days, as many as the last {#before} days had or called for</source>
        <translation>para unos {#count} cuidados en los próximos {#days} días, como los últimos {#before} días tuvieron o pedían</translation>
    </message>
    <message>
        <source>one lasts about 1 run</source>
        <translation>uno dura cerca de 1 vez</translation>
    </message>
    <message>
        <source>one lasts about {#runs} runs</source>
        <translation>uno dura unas {#runs} veces</translation>
    </message>
    <message>
        <source>{#ever} in the logbook, about {#ahead} in the next {#days} days</source>
        <translation>{#ever} en el cuaderno, unas {#ahead} en los próximos {#days} días</translation>
    </message>
    <message>
        <source>the arc was calibrated for {~made}</source>
        <translation>el arco se calibró para {~made}</translation>
    </message>
    <message>
        <source>{#count} fibres at once, mode {mode}, from {@when} on</source>
        <translation>{#count} fibras a la vez, modo {mode}, desde el {@when}</translation>
    </message>
    <message>
        <source>{#count} fibres at once, no mode named, from {@when} on</source>
        <translation>{#count} fibras a la vez, sin modo, desde el {@when}</translation>
    </message>
    <message>
        <source>1 fibre at once, mode {mode}, from {@when} on</source>
        <translation>1 fibra a la vez, modo {mode}, desde el {@when}</translation>
    </message>
    <message>
        <source>1 fibre at once, no mode named, from {@when} on</source>
        <translation>1 fibra a la vez, sin modo, desde el {@when}</translation>
    </message>
    <message>
        <source>before gentler care</source>
        <translation>antes que un cuidado más suave</translation>
    </message>
    <message>
        <source>before gentler care: {reason}</source>
        <translation>antes que un cuidado más suave: {reason}</translation>
    </message>
    <message>
        <source>there is no room for a readable copy: {why}</source>
        <translation>no hay sitio para una copia legible: {why}</translation>
    </message>
    <message>
        <source>only pictures named .jpg, .jpeg or .png are taken</source>
        <translation>solo se toman imágenes llamadas .jpg, .jpeg o .png</translation>
    </message>
    <message>
        <source>Look whether you may read it, or choose another</source>
        <translation>Mire si puede leerla o elija otra</translation>
    </message>
    <message>
        <source>the file cannot be written</source>
        <translation>el archivo no se puede escribir</translation>
    </message>
    <message>
        <source>Choose a folder you may write to, with room on it</source>
        <translation>Elija una carpeta con espacio en la que pueda escribir</translation>
    </message>
    <message>
        <source>not saved</source>
        <translation>no se guardó</translation>
    </message>
    <message>
        <source>Try it again</source>
        <translation>Inténtelo de nuevo</translation>
    </message>
    <message>
        <source>the note is empty</source>
        <translation>la nota está vacía</translation>
    </message>
    <message>
        <source>Write it, or Esc leaves it</source>
        <translation>Escríbala, o Esc la deja</translation>
    </message>
    <message>
        <source>the note is not saved yet</source>
        <translation>la nota aún no está guardada</translation>
    </message>
    <message>
        <source>Ctrl+Enter saves it, Esc once more drops it</source>
        <translation>Ctrl+Intro la guarda, Esc otra vez la borra</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is no day or stretch of days</source>
        <translation>«{text}» no es un día ni un tramo de días</translation>
    </message>
    <message>
        <source>Type 2031-03-03, 2031-03, 7 d or 2031-03-03 to 2031-03-15</source>
        <translation>Escriba 2031-03-03, 2031-03, 7 d o 2031-03-03 to 2031-03-15</translation>
    </message>
    <message>
        <source>photos and notes belong to a splice, a closure or a care record</source>
        <translation>las fotos y notas son de un empalme, una caja o un registro de cuidado</translation>
    </message>
    <message>
        <source>Choose one first</source>
        <translation>Elija uno primero</translation>
    </message>
    <message>
        <source>the date &quot;{text}&quot; can be read in more than one way; say in the key under &quot;dates&quot; how</source>
        <translation>la fecha «{text}» se puede leer de varias maneras; diga cómo en la clave, en «dates»</translation>
    </message>
    <message>
        <source>the time &quot;{text}&quot; cannot be read: {~why}</source>
        <translation>la hora «{text}» no se puede leer: {~why}</translation>
    </message>
    <message>
        <source>it does not begin with a date</source>
        <translation>no empieza con una fecha</translation>
    </message>
    <message>
        <source>the year needs four digits</source>
        <translation>el año necesita cuatro cifras</translation>
    </message>
    <message>
        <source>there is no such month; are day and month the other way round?</source>
        <translation>ese mes no existe; ¿están el día y el mes al revés?</translation>
    </message>
    <message>
        <source>the time of day is missing</source>
        <translation>falta la hora del día</translation>
    </message>
    <message>
        <source>the hour does not go with AM or PM</source>
        <translation>la hora no va con AM o PM</translation>
    </message>
    <message>
        <source>the row has no loss</source>
        <translation>la fila no tiene pérdida</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a number</source>
        <translation>«{text}» no es un número</translation>
    </message>
    <message>
        <source>How the set-aside rows of {file} are read again</source>
        <translation>Cómo se leen de nuevo las filas apartadas de {file}</translation>
    </message>
    <message>
        <source>Set-aside row mended: {text}</source>
        <translation>Fila apartada corregida: {text}</translation>
    </message>
    <message>
        <source>nothing is changed</source>
        <translation>no hay nada cambiado</translation>
    </message>
    <message>
        <source>Change something, or leave with Esc</source>
        <translation>Cambie algo o salga con Esc</translation>
    </message>
    <message>
        <source>Choose it above to change it</source>
        <translation>Elíjala arriba para cambiarla</translation>
    </message>
    <message>
        <source>still: {~why}</source>
        <translation>todavía: {~why}</translation>
    </message>
    <message>
        <source>job</source>
        <translation>obra</translation>
    </message>
    <message>
        <source>closure</source>
        <translation>caja</translation>
    </message>
    <message>
        <source>attempt</source>
        <translation>intento</translation>
    </message>
    <message>
        <source>temperature, °C</source>
        <translation>temperatura, °C</translation>
    </message>
    <message>
        <source>humidity, %</source>
        <translation>humedad, %</translation>
    </message>
    <message>
        <source>pressure, hPa</source>
        <translation>presión, hPa</translation>
    </message>
    <message>
        <source>wavelength, nm</source>
        <translation>longitud de onda, nm</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrumento</translation>
    </message>
    <message>
        <source>Treat every fibre as live: never look into a fibre or connector (IEC 60825-2).</source>
        <translation>Trate cada fibra como activa: nunca mire dentro de una fibra o un conector (IEC 60825-2).</translation>
    </message>
    <message>
        <source>Fibre ends are glass shards: eye protection, a shard bin, no food at the bench.</source>
        <translation>Los extremos de fibra son agujas de vidrio: gafas de protección, recipiente de restos, nada de comida en la mesa.</translation>
    </message>
    <message>
        <source>Splicer electrodes carry high voltage: power off and unplug before touching them.</source>
        <translation>Los electrodos de la empalmadora llevan alta tensión: apague y desconecte antes de tocarlos.</translation>
    </message>
    <message>
        <source>Alcohol is flammable and an arc ignites gas: ventilate, let it dry, test the air in manholes and pits.</source>
        <translation>El alcohol es inflamable y un arco enciende el gas: ventile, deje secar, mida el aire en arquetas y pozos.</translation>
    </message>
    <message>
        <source>Follow local codes and licensed practice.</source>
        <translation>Respete las normas locales y el trabajo autorizado.</translation>
    </message>
    <message>
        <source>power adequate, position adequate</source>
        <translation>potencia adecuada, posición adecuada</translation>
    </message>
    <message>
        <source>power adequate, position not adequate</source>
        <translation>potencia adecuada, posición no adecuada</translation>
    </message>
    <message>
        <source>power not adequate, position adequate</source>
        <translation>potencia no adecuada, posición adecuada</translation>
    </message>
    <message>
        <source>power not adequate, position not adequate</source>
        <translation>potencia no adecuada, posición no adecuada</translation>
    </message>
    <message>
        <source>1 fibre, 1 run</source>
        <translation>1 fibra, 1 pasada</translation>
    </message>
    <message>
        <source>1 fibre, {#runs} runs</source>
        <translation>1 fibra, {#runs} pasadas</translation>
    </message>
    <message>
        <source>{#fibres} fibres, 1 run</source>
        <translation>{#fibres} fibras, 1 pasada</translation>
    </message>
    <message>
        <source>{#fibres} fibres, {#runs} runs</source>
        <translation>{#fibres} fibras, {#runs} pasadas</translation>
    </message>
    <message>
        <source>height {#height}, position {#position}</source>
        <translation>altura {#height}, posición {#position}</translation>
    </message>
    <message>
        <source>On no span</source>
        <translation>En ningún tramo</translation>
    </message>
    <message>
        <source>No link budget: the length of span {label} is not written down.</source>
        <translation>Sin presupuesto de enlace: la longitud del tramo {label} no está anotada.</translation>
    </message>
    <message>
        <source>No link budget: these closures are on no span.</source>
        <translation>Sin presupuesto de enlace: estas cajas no están en ningún tramo.</translation>
    </message>
    <message>
        <source>One fibre from {from} to {to}.</source>
        <translation>Una fibra de {from} a {to}.</translation>
    </message>
    <message>
        <source>As spliced: the mean of both directions where a splice was measured, else the splicer&apos;s estimate.</source>
        <translation>Empalmado: la media de ambos sentidos donde se midió el empalme; si no, la estimación de la empalmadora.</translation>
    </message>
    <message>
        <source>Span {label} with 1 closure</source>
        <translation>Tramo {label} con 1 caja</translation>
    </message>
    <message>
        <source>Span {label} with {#count} closures</source>
        <translation>Tramo {label} con {#count} cajas</translation>
    </message>
    <message>
        <source>the span has no label</source>
        <translation>el tramo no tiene etiqueta</translation>
    </message>
    <message>
        <source>this job has a span {label} already</source>
        <translation>esta obra ya tiene un tramo {label}</translation>
    </message>
    <message>
        <source>this job has no closure {label}</source>
        <translation>esta obra no tiene ninguna caja {label}</translation>
    </message>
    <message>
        <source>Write the closures like &quot;HR-01 to HR-05, HR-07&quot;</source>
        <translation>Escriba las cajas como &quot;HR-01 to HR-05, HR-07&quot;</translation>
    </message>
    <message>
        <source>closure {label} is named twice</source>
        <translation>la caja {label} se nombra dos veces</translation>
    </message>
    <message>
        <source>closure {label} is on span {span} already</source>
        <translation>la caja {label} ya está en el tramo {span}</translation>
    </message>
    <message>
        <source>A splice counts in one span: leave the closure out of one of them</source>
        <translation>Un empalme cuenta en un solo tramo: quite la caja de uno de ellos</translation>
    </message>
    <message>
        <source>&quot;{text}&quot; is not a length in km</source>
        <translation>&quot;{text}&quot; no es una longitud en km</translation>
    </message>
    <message>
        <source>this job has no cable {label}</source>
        <translation>esta obra no tiene ningún cable {label}</translation>
    </message>
    <message>
        <source>Make the cable first</source>
        <translation>Cree antes el cable</translation>
    </message>
    <message>
        <source>the header has no column {name}</source>
        <translation>la cabecera no tiene la columna {name}</translation>
    </message>
    <message>
        <source>Begin the file with the line span,from,to,cable,length_km,closures</source>
        <translation>Empiece el archivo con la línea span,from,to,cable,length_km,closures</translation>
    </message>
    <message>
        <source>span {label} is in the file twice</source>
        <translation>el tramo {label} está dos veces en el archivo</translation>
    </message>
    <message>
        <source>where the span goes from is one closure or one named end</source>
        <translation>el origen del tramo es una caja o un extremo con nombre</translation>
    </message>
    <message>
        <source>where the span goes to is one closure or one named end</source>
        <translation>el final del tramo es una caja o un extremo con nombre</translation>
    </message>
    <message>
        <source>the span ends where it begins</source>
        <translation>el tramo termina donde empieza</translation>
    </message>
    <message>
        <source>the length of the span is not between 0 and 20,000 km</source>
        <translation>la longitud del tramo no está entre 0 y 20.000 km</translation>
    </message>
    <message>
        <source>the span has more than 1,000 closures</source>
        <translation>el tramo tiene más de 1.000 cajas</translation>
    </message>
    <message>
        <source>a closure is on the span twice</source>
        <translation>una caja está dos veces en el tramo</translation>
    </message>
    <message>
        <source>this is a logbook, not a table</source>
        <translation>esto es una bitácora, no una tabla</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Elija otro archivo</translation>
    </message>
    <message>
        <source>the file is too large for such a table</source>
        <translation>el archivo es demasiado grande para una tabla así</translation>
    </message>
    <message>
        <source>the row is not in this logbook</source>
        <translation>la fila no está en esta bitácora</translation>
    </message>
    <message>
        <source>Putting the splices in order</source>
        <translation>Ordenando los empalmes</translation>
    </message>
    <message>
        <source>closure {label}</source>
        <translation>caja {label}</translation>
    </message>
    <message>
        <source>{closure}, splice of {time} on {splicer}</source>
        <translation>{closure}, empalme del {time} en {splicer}</translation>
    </message>
    <message>
        <source>{tool}, care {~action} of {time}</source>
        <translation>{tool}, cuidado {~action} del {time}</translation>
    </message>
    <message>
        <source>{field} must be a whole number between {#least} and {#most}</source>
        <translation>{field} debe ser un número entero entre {#least} y {#most}</translation>
    </message>
</context>
</TS>
