<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>QObject</name>
    <message>
        <source>The printer is set to paper of %1 × %2 mm, the sheets are made for %3 × %4 mm. The driver would scale or cut them. Choose the same paper here and in the printer&apos;s settings.</source>
        <translation>La impresora está ajustada para papel de %1 × %2 mm y las hojas están hechas para %3 × %4 mm. El controlador las escalaría o las cortaría. Elija el mismo papel aquí y en los ajustes de la impresora.</translation>
    </message>
    <message>
        <source>The driver insists on its own margins, so the sheets may be shifted or scaled. Choose “no margins” or “borderless” in the printer&apos;s settings.</source>
        <translation>El controlador impone sus propios márgenes, así que las hojas pueden salir desplazadas o escaladas. Elija «sin márgenes» o «sin bordes» en los ajustes de la impresora.</translation>
    </message>
    <message>
        <source>This printer cannot print nearer than %1 mm to the paper&apos;s edge, the sheets need %2 mm. What is outside would be lost. Choose larger paper.</source>
        <translation>Esta impresora no puede imprimir a menos de %1 mm del borde del papel y las hojas necesitan %2 mm. Lo que quede fuera se perdería. Elija un papel más grande.</translation>
    </message>
    <message>
        <source>The printer&apos;s settings fit, scale or gather the pages. Choose 100 % or “actual size”, and one page on each side.</source>
        <translation>Los ajustes de la impresora adaptan, escalan o agrupan las páginas. Elija 100 % o «tamaño real», y una página por cara.</translation>
    </message>
</context>
<context>
    <name>creaseline::DeskWindow</name>
    <message>
        <source>Changes not saved</source>
        <translation>Cambios sin guardar</translation>
    </message>
    <message>
        <source>The order has changes that are not saved. Save them?</source>
        <translation>El pedido tiene cambios sin guardar. ¿Quiere guardarlos?</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>&amp;Do not save</source>
        <translation>&amp;No guardar</translation>
    </message>
    <message>
        <source>Stay &amp;here</source>
        <translation>&amp;Seguir aquí</translation>
    </message>
    <message>
        <source>Open an order</source>
        <translation>Abrir un pedido</translation>
    </message>
    <message>
        <source>Orders (*.order.json);;JSON files (*.json);;All files (*)</source>
        <translation>Pedidos (*.order.json);;Archivos JSON (*.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Open a shop</source>
        <translation>Abrir un taller</translation>
    </message>
    <message>
        <source>Shops (*.shop.json);;JSON files (*.json);;All files (*)</source>
        <translation>Talleres (*.shop.json);;Archivos JSON (*.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>About Creaseline</source>
        <translation>Acerca de Creaseline</translation>
    </message>
    <message>
        <source>&lt;b&gt;Creaseline&lt;/b&gt;&lt;p&gt;Plans garment embroidery: where each design goes on every garment and size, which frame holds it there, what goes behind it, and what has to be known before the first garment is hooped.&lt;/p&gt;&lt;p&gt;Free software under the MIT licence.&lt;/p&gt;</source>
        <translation>&lt;b&gt;Creaseline&lt;/b&gt;&lt;p&gt;Planifica el bordado de prendas: dónde va cada diseño en cada prenda y talla, qué bastidor lo sujeta ahí, qué va detrás y qué hay que saber antes de poner la primera prenda en el bastidor.&lt;/p&gt;&lt;p&gt;Software libre con licencia MIT.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>From its next start on the desk speaks %1</source>
        <comment>language</comment>
        <translation>Idioma desde el próximo inicio: %1</translation>
    </message>
    <message>
        <source>The window stays as it is until then. Reasons and findings of the plan, and the sheets, are in English in every language.</source>
        <translation>Hasta entonces la ventana sigue como está. Las razones y los avisos del plan, y las hojas, están en inglés sea cual sea el idioma.</translation>
    </message>
    <message>
        <source>From a file…</source>
        <translation>De un archivo…</translation>
    </message>
    <message>
        <source>With a design from a file…</source>
        <translation>Con un diseño de un archivo…</translation>
    </message>
    <message>
        <source>Every place of this garment is taken</source>
        <translation>Todas las ubicaciones de esta prenda están ocupadas</translation>
    </message>
    <message>
        <source>Change one of its places, or add the garment on a line of its own.</source>
        <translation>Cambie una de sus ubicaciones o añada la prenda en una línea propia.</translation>
    </message>
    <message>
        <source>Add a garment</source>
        <translation>Añadir una prenda</translation>
    </message>
    <message>
        <source>Garments (*.blank.json);;JSON files (*.json)</source>
        <translation>Prendas (*.blank.json);;Archivos JSON (*.json)</translation>
    </message>
    <message>
        <source>The garment cannot be added</source>
        <translation>No se puede añadir la prenda</translation>
    </message>
    <message>
        <source>Add a design</source>
        <translation>Añadir un diseño</translation>
    </message>
    <message>
        <source>Designs (*.design.json);;JSON files (*.json)</source>
        <translation>Diseños (*.design.json);;Archivos JSON (*.json)</translation>
    </message>
    <message>
        <source>The design cannot be added</source>
        <translation>No se puede añadir el diseño</translation>
    </message>
    <message>
        <source>Unsaved changes cannot be kept against a crash</source>
        <translation>Los cambios sin guardar no se pueden proteger de un cierre inesperado</translation>
    </message>
    <message>
        <source>%1. Save the order often.</source>
        <translation>%1. Guarde el pedido con frecuencia.</translation>
    </message>
    <message>
        <source>1</source>
        <comment>number of a first order</comment>
        <translation>1</translation>
    </message>
    <message>
        <source>Save the order</source>
        <translation>Guardar el pedido</translation>
    </message>
    <message>
        <source>Orders (*.order.json)</source>
        <translation>Pedidos (*.order.json)</translation>
    </message>
    <message>
        <source>The order was not saved</source>
        <translation>El pedido no se ha guardado</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Guardado como %1</translation>
    </message>
    <message>
        <source>Not saved yet: somebody else saved this order</source>
        <translation>Aún sin guardar: otra persona ha guardado este pedido</translation>
    </message>
    <message>
        <source>%1. Both changes are being put together; look at them, then save again.</source>
        <translation>%1. Se están reuniendo los cambios de ambos; revíselos y vuelva a guardar.</translation>
    </message>
    <message>
        <source>%1. The file is as it was; save it in another place.</source>
        <translation>%1. El archivo está como estaba; guárdelo en otro lugar.</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Guardar co&amp;mo…</translation>
    </message>
    <message>
        <source>%1: here %2, in the file %3</source>
        <comment>place: mine, theirs</comment>
        <translation>%1: aquí %2, en el archivo %3</translation>
    </message>
    <message>
        <source>Somebody else changed this order, too</source>
        <translation>Otra persona también ha cambiado este pedido</translation>
    </message>
    <message>
        <source>Both changes are in it now. Undo takes theirs out again.</source>
        <translation>Ahora contiene los cambios de ambos. Con Deshacer se quitan los de la otra persona.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>Somebody else changed the same things; yours were kept</source>
        <translation>Otra persona ha cambiado lo mismo; se han conservado los cambios de usted</translation>
    </message>
    <message>
        <source>Take &amp;theirs</source>
        <translation>&amp;Tomar los del archivo</translation>
    </message>
    <message>
        <source>Order %1 was not saved</source>
        <translation>El pedido %1 no se guardó</translation>
    </message>
    <message>
        <source>The program ended before it could be. What was in it at %1 is still here.</source>
        <translation>El programa se cerró antes de poder guardarlo. Lo que contenía el %1 sigue aquí.</translation>
    </message>
    <message>
        <source>&amp;Take it up again</source>
        <translation>&amp;Recuperarlo</translation>
    </message>
    <message>
        <source>Drop it</source>
        <translation>Descartarlo</translation>
    </message>
    <message>
        <source>What was left cannot be read</source>
        <translation>No se puede leer lo que quedó sin guardar</translation>
    </message>
    <message>
        <source>Sizes, all to one scale</source>
        <translation>Tallas, todas a la misma escala</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Razones</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Avisos</translation>
    </message>
    <message>
        <source>+ Garment</source>
        <translation>+ Prenda</translation>
    </message>
    <message>
        <source>+ Place</source>
        <translation>+ Ubicación</translation>
    </message>
    <message>
        <source>Planning done</source>
        <translation>Planificación hecha</translation>
    </message>
    <message>
        <source>Stop planning</source>
        <translation>Detener la planificación</translation>
    </message>
    <message>
        <source>Choose a place in the order to see why it is as it is.</source>
        <translation>Elija una ubicación del pedido para ver por qué es como es.</translation>
    </message>
    <message>
        <source>Creaseline[*]</source>
        <translation>Creaseline[*]</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>order number, title</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1[*] - Creaseline</source>
        <translation>%1[*] - Creaseline</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>entrega %1</translation>
    </message>
    <message numerus="yes">
        <source>%n garment(s)</source>
        <translation>
            <numerusform>%n prenda</numerusform>
            <numerusform>%n prendas</numerusform>
        </translation>
    </message>
    <message>
        <source>planned for %1</source>
        <translation>planificado para %1</translation>
    </message>
    <message numerus="yes">
        <source>%n stop(s)</source>
        <translation>
            <numerusform>%n impedimento</numerusform>
            <numerusform>%n impedimentos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n watch(es)</source>
        <translation>
            <numerusform>%n advertencia</numerusform>
            <numerusform>%n advertencias</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n note(s)</source>
        <translation>
            <numerusform>%n nota</numerusform>
            <numerusform>%n notas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hooping(s)</source>
        <translation>
            <numerusform>%n puesta en bastidor</numerusform>
            <numerusform>%n puestas en bastidor</numerusform>
        </translation>
    </message>
    <message>
        <source>The order</source>
        <translation>El pedido</translation>
    </message>
    <message>
        <source>%1 cannot be read; the last good plan stays on screen</source>
        <translation>No se puede leer %1; el último plan válido sigue en pantalla</translation>
    </message>
    <message>
        <source>%1 cannot be planned</source>
        <translation>No se puede planificar %1</translation>
    </message>
    <message>
        <source>%1 cannot be opened</source>
        <translation>No se puede abrir %1</translation>
    </message>
    <message>
        <source>File: %1</source>
        <translation>Archivo: %1</translation>
    </message>
    <message>
        <source>Place: %1</source>
        <translation>Lugar: %1</translation>
    </message>
    <message>
        <source>Found: %1</source>
        <translation>Encontrado: %1</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Esperado: %1</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>Rein&amp;tentar</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>file, place: remark</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message numerus="yes">
        <source>Read, with %n remark(s)</source>
        <translation>
            <numerusform>Leído, con %n observación</numerusform>
            <numerusform>Leído, con %n observaciones</numerusform>
        </translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planificando</translation>
    </message>
    <message>
        <source>Printing sheets</source>
        <translation>Imprimiendo hojas</translation>
    </message>
    <message>
        <source>Saving sheets</source>
        <translation>Guardando hojas</translation>
    </message>
    <message>
        <source>Stop printing</source>
        <translation>Detener la impresión</translation>
    </message>
    <message>
        <source>Stop saving</source>
        <translation>Detener el guardado</translation>
    </message>
    <message>
        <source>&amp;Clear the list</source>
        <translation>&amp;Vaciar la lista</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) saved</source>
        <translation>
            <numerusform>%n hoja guardada</numerusform>
            <numerusform>%n hojas guardadas</numerusform>
        </translation>
    </message>
    <message>
        <source>The sheets were not printed</source>
        <translation>Las hojas no se han impreso</translation>
    </message>
    <message>
        <source>The sheets were not saved</source>
        <translation>Las hojas no se han guardado</translation>
    </message>
    <message>
        <source>Printing stopped</source>
        <translation>Impresión detenida</translation>
    </message>
    <message>
        <source>Saving stopped; no file was written</source>
        <translation>Guardado detenido; no se ha escrito ningún archivo</translation>
    </message>
    <message>
        <source>Save the sheets as a PDF</source>
        <translation>Guardar las hojas como PDF</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Choose the folder for the pictures</source>
        <translation>Elija la carpeta para las imágenes</translation>
    </message>
    <message>
        <source>Pictures of pages are there already</source>
        <translation>Ya hay imágenes de páginas</translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s) of pages in this folder will be removed. Go on?</source>
        <translation>
            <numerusform>Se eliminará %n imagen de página de esta carpeta. ¿Continuar?</numerusform>
            <numerusform>Se eliminarán %n imágenes de páginas de esta carpeta. ¿Continuar?</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Replace them</source>
        <translation>&amp;Reemplazarlas</translation>
    </message>
    <message>
        <source>&amp;Keep them</source>
        <translation>&amp;Conservarlas</translation>
    </message>
    <message>
        <source>Print the sheets</source>
        <translation>Imprimir las hojas</translation>
    </message>
    <message>
        <source>Not in true scale</source>
        <translation>No a escala real</translation>
    </message>
    <message>
        <source>The written numbers hold, the drawings&apos; scale does not. Templates and gauges printed so are worthless.</source>
        <translation>Los números escritos valen; la escala de los dibujos, no. Las plantillas y los calibres impresos así no sirven.</translation>
    </message>
    <message>
        <source>&amp;Print anyway</source>
        <translation>&amp;Imprimir de todos modos</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Volver</translation>
    </message>
    <message>
        <source>Nothing was printed</source>
        <translation>No se ha impreso nada</translation>
    </message>
    <message>
        <source>The printer did not accept the sheets. Save them as a PDF instead.</source>
        <translation>La impresora no ha aceptado las hojas. Guárdelas como PDF.</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) sent to the printer</source>
        <translation>
            <numerusform>%n hoja enviada a la impresora</numerusform>
            <numerusform>%n hojas enviadas a la impresora</numerusform>
        </translation>
    </message>
    <message>
        <source>Measure the bar at the foot of the first sheet: it must be 100 mm long.</source>
        <translation>Mida la barra al pie de la primera hoja: debe medir 100 mm.</translation>
    </message>
</context>
<context>
    <name>creaseline::desk</name>
    <message>
        <source>stop</source>
        <translation>impedimento</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>advertencia</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>fine</source>
        <translation>bien</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::DeskActions</name>
    <message>
        <source>&amp;New order</source>
        <translation>&amp;Nuevo pedido</translation>
    </message>
    <message>
        <source>Sav&amp;e the order</source>
        <translation>&amp;Guardar el pedido</translation>
    </message>
    <message>
        <source>Save the order &amp;as…</source>
        <translation>Guardar el pedido &amp;como…</translation>
    </message>
    <message>
        <source>&amp;Open order…</source>
        <translation>&amp;Abrir pedido…</translation>
    </message>
    <message>
        <source>Open &amp;shop…</source>
        <translation>Abrir &amp;taller…</translation>
    </message>
    <message>
        <source>Open the &amp;demo</source>
        <translation>Abrir la &amp;demostración</translation>
    </message>
    <message>
        <source>&amp;Reload the files</source>
        <translation>&amp;Volver a leer los archivos</translation>
    </message>
    <message>
        <source>Sa&amp;ve sheets…</source>
        <translation>Guardar &amp;hojas…</translation>
    </message>
    <message>
        <source>Pr&amp;int sheets…</source>
        <translation>&amp;Imprimir hojas…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>&amp;Acercar</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>A&amp;lejar</translation>
    </message>
    <message>
        <source>&amp;Fit the garment</source>
        <translation>Ver la &amp;prenda entera</translation>
    </message>
    <message>
        <source>Go to the o&amp;rder</source>
        <translation>Ir al pe&amp;dido</translation>
    </message>
    <message>
        <source>Go to the &amp;table</source>
        <translation>Ir a la &amp;mesa</translation>
    </message>
    <message>
        <source>Go to the &amp;sizes</source>
        <translation>Ir a las &amp;tallas</translation>
    </message>
    <message>
        <source>Go to the &amp;details</source>
        <translation>Ir a los detall&amp;es</translation>
    </message>
    <message>
        <source>Go to the r&amp;easons</source>
        <translation>Ir a las ra&amp;zones</translation>
    </message>
    <message>
        <source>Go to the fi&amp;ndings</source>
        <translation>Ir a los a&amp;visos</translation>
    </message>
    <message>
        <source>&amp;About Creaseline</source>
        <translation>&amp;Acerca de Creaseline</translation>
    </message>
    <message>
        <source>Add a &amp;garment</source>
        <translation>Añadir una &amp;prenda</translation>
    </message>
    <message>
        <source>Add a &amp;place</source>
        <translation>Añadir una &amp;ubicación</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation>Dup&amp;licar</translation>
    </message>
    <message>
        <source>R&amp;emove</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>&amp;Further up</source>
        <translation>&amp;Subir</translation>
    </message>
    <message>
        <source>Further d&amp;own</source>
        <translation>&amp;Bajar</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>Show lengths in inches</source>
        <translation>Mostrar las medidas en pulgadas</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>Show lengths in centimetres</source>
        <translation>Mostrar las medidas en centímetros</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Show lengths in millimetres</source>
        <translation>Mostrar las medidas en milímetros</translation>
    </message>
    <message>
        <source>1/8</source>
        <translation>1/8</translation>
    </message>
    <message>
        <source>Inches to an eighth</source>
        <translation>Pulgadas en octavos</translation>
    </message>
    <message>
        <source>1/16</source>
        <translation>1/16</translation>
    </message>
    <message>
        <source>Inches to a sixteenth</source>
        <translation>Pulgadas en dieciseisavos</translation>
    </message>
    <message>
        <source>&amp;As the system</source>
        <translation>&amp;Como el sistema</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>Re&amp;cent orders</source>
        <translation>Pedidos &amp;recientes</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Edición</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unidades</translation>
    </message>
    <message>
        <source>Ruler &amp;mark</source>
        <translation>División de la &amp;regla</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Herramientas</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nuevo</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Taller</translation>
    </message>
    <message>
        <source>Save sheets</source>
        <translation>Guardar hojas</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Units </source>
        <translation>Unidades </translation>
    </message>
    <message>
        <source>Ruler mark </source>
        <translation>Regla </translation>
    </message>
</context>
<context>
    <name>creaseline::desk::DetailsPanel</name>
    <message>
        <source>Details to edit</source>
        <translation>Detalles para editar</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Garment</source>
        <translation>Prenda</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ubicación</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::Document</name>
    <message>
        <source>Take up what was not saved</source>
        <translation>Recuperar lo que no se guardó</translation>
    </message>
    <message>
        <source>Take over what changed in the file</source>
        <translation>Incorporar lo que cambió en el archivo</translation>
    </message>
    <message>
        <source>Take what the file says</source>
        <translation>Tomar lo que dice el archivo</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::FindingModel</name>
    <message>
        <source>%1. %2. %3</source>
        <comment>severity. place. text</comment>
        <translation>%1. %2. %3</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::FindingsPanel</name>
    <message>
        <source>Findings</source>
        <translation>Avisos</translation>
    </message>
    <message>
        <source>Nothing to say: everything can be sewn as ordered.</source>
        <translation>Sin avisos: todo se puede bordar como se pidió.</translation>
    </message>
    <message>
        <source>No plan yet.</source>
        <translation>Aún no hay plan.</translation>
    </message>
    <message>
        <source>What would help (each planned and checked):</source>
        <translation>Qué ayudaría (cada opción, planificada y comprobada):</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>remedy: result</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Try it</source>
        <translation>Probar</translation>
    </message>
    <message>
        <source>Try: %1</source>
        <translation>Probar: %1</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::FramesPick</name>
    <message>
        <source>Frames in which the order is sewn</source>
        <translation>Bastidores en los que se borda el pedido</translation>
    </message>
    <message>
        <source>Tick frames to plan the order in these alone</source>
        <translation>Marque bastidores para planificar el pedido solo con ellos</translation>
    </message>
    <message>
        <source>Any frame</source>
        <translation>Cualquier bastidor</translation>
    </message>
    <message>
        <source>%1, not in this shop</source>
        <translation>%1, no está en este taller</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::LineForm</name>
    <message>
        <source>Number of the line</source>
        <translation>Número de la línea</translation>
    </message>
    <message>
        <source>Garment of the line</source>
        <translation>Prenda de la línea</translation>
    </message>
    <message>
        <source>Colour of the garment</source>
        <translation>Color de la prenda</translation>
    </message>
    <message>
        <source>Note of the line</source>
        <translation>Nota de la línea</translation>
    </message>
    <message>
        <source>&amp;Line</source>
        <translation>&amp;Línea</translation>
    </message>
    <message>
        <source>&amp;Garment</source>
        <translation>&amp;Prenda</translation>
    </message>
    <message>
        <source>&amp;Colour</source>
        <translation>&amp;Color</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Tallas</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ota</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Garments in size %1</source>
        <translation>Prendas de talla %1</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::MessageBar</name>
    <message>
        <source>Hide</source>
        <translation>Ocultar</translation>
    </message>
    <message>
        <source>Hide the message</source>
        <translation>Ocultar el mensaje</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::OrderEdits</name>
    <message>
        <source>Order number %1</source>
        <translation>Número de pedido %1</translation>
    </message>
    <message>
        <source>Title %1</source>
        <translation>Título %1</translation>
    </message>
    <message>
        <source>Customer %1</source>
        <translation>Cliente %1</translation>
    </message>
    <message>
        <source>No due date</source>
        <translation>Sin fecha de entrega</translation>
    </message>
    <message>
        <source>Due %1</source>
        <translation>Entrega %1</translation>
    </message>
    <message>
        <source>Note of the order</source>
        <translation>Nota del pedido</translation>
    </message>
    <message>
        <source>Sew the order in any frame</source>
        <translation>Bordar el pedido en cualquier bastidor</translation>
    </message>
    <message>
        <source>Sew the order in %1</source>
        <comment>frames</comment>
        <translation>Bordar el pedido en %1</translation>
    </message>
    <message>
        <source>line %1, %2</source>
        <comment>line&apos;s id, garment</comment>
        <translation>línea %1, %2</translation>
    </message>
    <message>
        <source>%1 of line %2</source>
        <comment>place, line&apos;s id</comment>
        <translation>%1 de la línea %2</translation>
    </message>
    <message>
        <source>No %1 on line %2</source>
        <comment>size, line&apos;s id</comment>
        <translation>Sin %1 en la línea %2</translation>
    </message>
    <message>
        <source>%1 × %2 on line %3</source>
        <comment>quantity, size, line&apos;s id</comment>
        <translation>%1 × %2 en la línea %3</translation>
    </message>
    <message>
        <source>No colour for %1</source>
        <translation>Sin color para %1</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <comment>colour, line</comment>
        <translation>%1 para %2</translation>
    </message>
    <message>
        <source>Note of %1</source>
        <translation>Nota de %1</translation>
    </message>
    <message>
        <source>Line %1 becomes %2</source>
        <translation>La línea %1 pasa a ser %2</translation>
    </message>
    <message>
        <source>Line %1 on %2</source>
        <comment>line&apos;s id, garment</comment>
        <translation>Línea %1 en %2</translation>
    </message>
    <message numerus="yes">
        <source>, %n size(s) or place(s) left out</source>
        <translation>
            <numerusform>, se omite %n talla o ubicación</numerusform>
            <numerusform>, se omiten %n tallas o ubicaciones</numerusform>
        </translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Añadir %1</translation>
    </message>
    <message>
        <source>Move %1 to %2</source>
        <comment>place, place</comment>
        <translation>Mover %1 a %2</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <comment>design, place</comment>
        <translation>%1 para %2</translation>
    </message>
    <message>
        <source>Scale %1 to %2 %</source>
        <comment>place, number</comment>
        <translation>Escalar %1 al %2 %</translation>
    </message>
    <message>
        <source>Move %1 %2 up of the rule</source>
        <comment>place, length</comment>
        <translation>Subir %2 respecto a la norma: %1</translation>
    </message>
    <message>
        <source>Move %1 %2 down of the rule</source>
        <comment>place, length</comment>
        <translation>Bajar %2 respecto a la norma: %1</translation>
    </message>
    <message>
        <source>Put %1 back to the rule</source>
        <translation>Devolver a la norma: %1</translation>
    </message>
    <message>
        <source>Turn %1 by %2</source>
        <comment>place, angle</comment>
        <translation>Girar %2: %1</translation>
    </message>
    <message>
        <source>Frames as the shop lays them for %1</source>
        <comment>place</comment>
        <translation>Bastidores como los pone el taller para %1</translation>
    </message>
    <message>
        <source>Turn the frame for %1 by %2</source>
        <comment>place, angle</comment>
        <translation>Girar %2 el bastidor para %1</translation>
    </message>
    <message>
        <source>Allow several hoopings for %1</source>
        <translation>Permitir varias puestas en bastidor para %1</translation>
    </message>
    <message>
        <source>One hooping for %1</source>
        <translation>Una sola puesta en bastidor para %1</translation>
    </message>
    <message>
        <source>Add %1 to line %2</source>
        <comment>place, line&apos;s id</comment>
        <translation>Añadir %1 a la línea %2</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translation>Duplicar %1</translation>
    </message>
    <message>
        <source>Put %1 further up</source>
        <translation>Subir %1 en el pedido</translation>
    </message>
    <message>
        <source>Put %1 further down</source>
        <translation>Bajar %1 en el pedido</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::OrderForm</name>
    <message>
        <source>Number of the order</source>
        <translation>Número del pedido</translation>
    </message>
    <message>
        <source>Title of the order</source>
        <translation>Título del pedido</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Due date, as in 2026-12-04</source>
        <translation>Fecha de entrega, como 2026-12-04</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>año-mes-día</translation>
    </message>
    <message>
        <source>Note of the order</source>
        <translation>Nota del pedido</translation>
    </message>
    <message>
        <source>N&amp;umber</source>
        <translation>&amp;Número</translation>
    </message>
    <message>
        <source>T&amp;itle</source>
        <translation>Títu&amp;lo</translation>
    </message>
    <message>
        <source>&amp;Customer</source>
        <translation>&amp;Cliente</translation>
    </message>
    <message>
        <source>&amp;Due</source>
        <translation>Entre&amp;ga</translation>
    </message>
    <message>
        <source>F&amp;rames</source>
        <translation>&amp;Bastidores</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ota</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::OrderModel</name>
    <message numerus="yes">
        <source>%n garment(s)</source>
        <translation>
            <numerusform>%n prenda</numerusform>
            <numerusform>%n prendas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>colour, garments</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Line %1: %2, %3: %4</source>
        <comment>number: garment, detail: state</comment>
        <translation>Línea %1: %2, %3: %4</translation>
    </message>
    <message>
        <source>Line %1: %2, %3</source>
        <translation>Línea %1: %2, %3</translation>
    </message>
    <message numerus="yes">
        <source>%n garment(s) in size %1</source>
        <translation>
            <numerusform>%n prenda de talla %1</numerusform>
            <numerusform>%n prendas de talla %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>place: design</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Size %1: %2</source>
        <translation>Talla %1: %2</translation>
    </message>
    <message>
        <source>Garment and place</source>
        <translation>Prenda y ubicación</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::OrderView</name>
    <message>
        <source>Garments in size %1</source>
        <translation>Prendas de talla %1</translation>
    </message>
    <message>
        <source>Order: lines, places and sizes</source>
        <translation>Pedido: líneas, ubicaciones y tallas</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::PageRangeBox</name>
    <message>
        <source>&amp;All pages</source>
        <translation>T&amp;odas las páginas</translation>
    </message>
    <message>
        <source>Pa&amp;ges from-to:</source>
        <translation>&amp;Desde-hasta:</translation>
    </message>
    <message>
        <source>Pages from one to another</source>
        <translation>Páginas desde una hasta otra</translation>
    </message>
    <message>
        <source>First and last page, such as 2-5</source>
        <translation>Primera y última página, por ejemplo 2-5</translation>
    </message>
    <message>
        <source>such as 2-5</source>
        <translation>p. ej. 2-5</translation>
    </message>
    <message>
        <source>The page on sho&amp;w, %1</source>
        <translation>La página a la &amp;vista, %1</translation>
    </message>
    <message>
        <source>First and last page, between 1 and %1, such as 2-5</source>
        <translation>Primera y última página, entre 1 y %1, por ejemplo 2-5</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::PlaceForm</name>
    <message>
        <source>Place on the garment</source>
        <translation>Ubicación en la prenda</translation>
    </message>
    <message>
        <source>Design at this place</source>
        <translation>Diseño en esta ubicación</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Ubicación</translation>
    </message>
    <message>
        <source>&amp;Design</source>
        <translation>&amp;Diseño</translation>
    </message>
    <message>
        <source>Sca&amp;le</source>
        <translation>E&amp;scala</translation>
    </message>
    <message>
        <source>&amp;Moved down</source>
        <translation>Más a&amp;bajo</translation>
    </message>
    <message>
        <source>Tu&amp;rned</source>
        <translation>&amp;Girado</translation>
    </message>
    <message>
        <source>Frame t&amp;urned</source>
        <translation>Bastidor g&amp;irado</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ota</translation>
    </message>
    <message>
        <source>Scale of the design, as in 90 %</source>
        <translation>Escala del diseño, como 90 %</translation>
    </message>
    <message>
        <source>Moved down from the rule; a minus sign moves up</source>
        <translation>Más abajo que la norma; con signo menos, más arriba</translation>
    </message>
    <message>
        <source>Turned clockwise against the rule, in degrees</source>
        <translation>Girado en sentido horario respecto a la norma, en grados</translation>
    </message>
    <message>
        <source>Frames may also lie turned clockwise by so much on the garment, in degrees</source>
        <translation>Los bastidores también pueden ir girados esto en sentido horario sobre la prenda, en grados</translation>
    </message>
    <message>
        <source>&amp;Several hoopings</source>
        <translation>Varias &amp;puestas en bastidor</translation>
    </message>
    <message>
        <source>Where no frame holds the design whole, sew it in parts that meet on register marks</source>
        <translation>Donde ningún bastidor abarca el diseño entero, bordarlo en partes que coinciden en marcas de registro</translation>
    </message>
    <message>
        <source>Note of the place</source>
        <translation>Nota de la ubicación</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>number</comment>
        <translation>%1 %</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::Reasons</name>
    <message>
        <source>%1, size %2</source>
        <translation>%1, talla %2</translation>
    </message>
    <message numerus="yes">
        <source>%n × %1, %2 (%3 × %4)</source>
        <translation>
            <numerusform>%n × %1, %2 (%3 × %4)</numerusform>
            <numerusform>%n × %1, %2 (%3 × %4)</numerusform>
        </translation>
    </message>
    <message>
        <source>rule %1</source>
        <translation>norma %1</translation>
    </message>
    <message>
        <source>rule %1: %2</source>
        <translation>norma %1: %2</translation>
    </message>
    <message>
        <source>would change with: %1</source>
        <translation>cambiaría con: %1</translation>
    </message>
    <message>
        <source>Needs attention</source>
        <translation>Requiere atención</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Parte</translation>
    </message>
    <message>
        <source>Part %1 of %2</source>
        <translation>Parte %1 de %2</translation>
    </message>
    <message>
        <source>Mark %1: %2</source>
        <translation>Marca %1: %2</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>No placement rule says where this goes on this garment</source>
        <translation>Ninguna norma de ubicación dice dónde va esto en esta prenda</translation>
    </message>
    <message>
        <source>Design starts %1 %2</source>
        <translation>El diseño empieza a %1 %2</translation>
    </message>
    <message>
        <source>Centre %1 %2</source>
        <translation>Centro a %1 %2</translation>
    </message>
    <message>
        <source>Turn: %1</source>
        <translation>Giro: %1</translation>
    </message>
    <message>
        <source>Letters: %1</source>
        <translation>Letras: %1</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Bastidor</translation>
    </message>
    <message>
        <source>No frame on hand can sew this here</source>
        <translation>Ningún bastidor disponible puede bordar esto aquí</translation>
    </message>
    <message>
        <source>A frame on hand would hold it, but cannot sit on the garment here</source>
        <translation>Un bastidor disponible lo abarcaría, pero no se puede colocar aquí en la prenda</translation>
    </message>
    <message>
        <source>A frame on hand holds at most %1 % of its size</source>
        <translation>Un bastidor disponible abarca como máximo el %1 % de su tamaño</translation>
    </message>
    <message>
        <source>Next best: %1</source>
        <translation>Segunda opción: %1</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Holgura</translation>
    </message>
    <message>
        <source>In the frame: %1</source>
        <translation>En el bastidor: %1</translation>
    </message>
    <message>
        <source>Frame body to %1: %2</source>
        <translation>Del cuerpo del bastidor a %1: %2</translation>
    </message>
    <message>
        <source>Design over %1 by %2</source>
        <translation>El diseño invade %1 en %2</translation>
    </message>
    <message>
        <source>Design to %1: %2 (at least %3)</source>
        <translation>Del diseño a %1: %2 (mínimo %3)</translation>
    </message>
    <message>
        <source>Frames ruled out</source>
        <translation>Bastidores descartados</translation>
    </message>
    <message>
        <source>%1 turned %2</source>
        <translation>%1 girado %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>frame: why not</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Backing</source>
        <translation>Estabilizador</translation>
    </message>
    <message>
        <source>Cut %1 × %2</source>
        <translation>Cortar %1 × %2</translation>
    </message>
    <message>
        <source>Nothing in stock serves</source>
        <translation>No hay nada adecuado en existencias</translation>
    </message>
    <message>
        <source>From stock: %1</source>
        <translation>De existencias: %1</translation>
    </message>
    <message>
        <source>Needle</source>
        <translation>Aguja</translation>
    </message>
    <message>
        <source>Sewing order</source>
        <translation>Secuencia de bordado</translation>
    </message>
    <message>
        <source>By hand: %1</source>
        <translation>A mano: %1</translation>
    </message>
    <message>
        <source>Assumed measures</source>
        <translation>Medidas supuestas</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>measure, length</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Cuidado</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::ReasonsView</name>
    <message>
        <source>Reasons for the selected placement</source>
        <translation>Razones de la ubicación elegida</translation>
    </message>
    <message>
        <source>(assumed)</source>
        <translation>(supuesto)</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::SheetTickList</name>
    <message>
        <source>Kinds of sheets</source>
        <translation>Tipos de hojas</translation>
    </message>
    <message>
        <source>Space ticks a kind, the arrow keys show its first page.</source>
        <translation>La barra espaciadora marca un tipo; las flechas muestran su primera página.</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::SheetTickModel</name>
    <message>
        <source>%1, %2</source>
        <comment>kind of sheet, pages</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>no pages</source>
        <translation>sin páginas</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n página</numerusform>
            <numerusform>%n páginas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>creaseline::desk::SheetsDialog</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>The sheets cannot be made: %1</source>
        <translation>No se pueden hacer las hojas: %1</translation>
    </message>
    <message>
        <source>No pages</source>
        <translation>Sin páginas</translation>
    </message>
    <message>
        <source> of %1</source>
        <comment>page number</comment>
        <translation> de %1</translation>
    </message>
    <message>
        <source>Tick at least one kind of sheets.</source>
        <translation>Marque al menos un tipo de hojas.</translation>
    </message>
    <message>
        <source>This order has no sheets of the kinds ticked.</source>
        <translation>Este pedido no tiene hojas de los tipos marcados.</translation>
    </message>
    <message>
        <source>Preview, no page</source>
        <translation>Vista previa, sin página</translation>
    </message>
    <message>
        <source>Preview of page %1 of %2: %3</source>
        <translation>Vista previa de la página %1 de %2: %3</translation>
    </message>
    <message>
        <source>Counting the pages</source>
        <translation>Contando las páginas</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) in all</source>
        <translation>
            <numerusform>%n página en total</numerusform>
            <numerusform>%n páginas en total</numerusform>
        </translation>
    </message>
    <message>
        <source>The order is not planned as it stands, so its sheets wait.</source>
        <translation>El pedido no está planificado tal como está, así que sus hojas esperan.</translation>
    </message>
    <message>
        <source>A4, 210 × 297 mm</source>
        <translation>A4, 210 × 297 mm</translation>
    </message>
    <message>
        <source>Letter, 8 1/2 × 11 in</source>
        <translation>Carta, 8 1/2 × 11 in</translation>
    </message>
    <message>
        <source>A3, 297 × 420 mm</source>
        <translation>A3, 297 × 420 mm</translation>
    </message>
    <message>
        <source>Tabloid, 11 × 17 in</source>
        <translation>Tabloide, 11 × 17 in</translation>
    </message>
    <message>
        <source>A2, 420 × 594 mm</source>
        <translation>A2, 420 × 594 mm</translation>
    </message>
    <message>
        <source>ANSI C, 17 × 22 in</source>
        <translation>ANSI C, 17 × 22 in</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>&amp;Kinds of sheets</source>
        <translation>&amp;Tipos de hojas</translation>
    </message>
    <message>
        <source>The sheets are being made</source>
        <translation>Se están haciendo las hojas</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papel</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>&amp;Mirrored templates as well</source>
        <translation>También plantillas en &amp;espejo</translation>
    </message>
    <message>
        <source>As seen from the back of the cloth</source>
        <translation>Como se ven desde el revés de la tela</translation>
    </message>
    <message>
        <source>&amp;Turned templates as well</source>
        <translation>También plantillas &amp;giradas</translation>
    </message>
    <message>
        <source>Upside down, for a garment that is loaded with its top towards you</source>
        <translation>Cabeza abajo, para una prenda que se carga con la parte de arriba hacia usted</translation>
    </message>
    <message>
        <source>Pre&amp;vious</source>
        <translation>&amp;Anterior</translation>
    </message>
    <message>
        <source>Page Up</source>
        <translation>Re Pág</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Siguiente</translation>
    </message>
    <message>
        <source>Page Down</source>
        <translation>Av Pág</translation>
    </message>
    <message>
        <source>Pag&amp;e</source>
        <translation>Pág&amp;ina</translation>
    </message>
    <message>
        <source>Page number</source>
        <translation>Número de página</translation>
    </message>
    <message>
        <source>&amp;Fit page</source>
        <translation>Página comp&amp;leta</translation>
    </message>
    <message>
        <source>A&amp;ctual size</source>
        <translation>Tamaño &amp;real</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Guardar como PD&amp;F…</translation>
    </message>
    <message>
        <source>Save as p&amp;ictures (SVG)…</source>
        <translation>Guardar como imáge&amp;nes (SVG)…</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation>I&amp;mprimir…</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>&amp;Cerrar</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::SizeModel</name>
    <message numerus="yes">
        <source>Size %1, %n garment(s), %2</source>
        <translation>
            <numerusform>Talla %1, %n prenda, %2</numerusform>
            <numerusform>Talla %1, %n prendas, %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>creaseline::desk::SizeRail</name>
    <message>
        <source>Sizes of the selected place</source>
        <translation>Tallas de la ubicación elegida</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::StartPage</name>
    <message>
        <source>&amp;New order</source>
        <translation>&amp;Nuevo pedido</translation>
    </message>
    <message>
        <source>Start a new order</source>
        <translation>Empezar un pedido nuevo</translation>
    </message>
    <message>
        <source>Open an &amp;order…</source>
        <translation>Abrir &amp;pedido…</translation>
    </message>
    <message>
        <source>Open a &amp;shop…</source>
        <translation>Abrir ta&amp;ller…</translation>
    </message>
    <message>
        <source>Open the &amp;demo</source>
        <translation>Abrir la &amp;demostración</translation>
    </message>
    <message>
        <source>Open an order from the start page</source>
        <translation>Abrir un pedido desde la página de inicio</translation>
    </message>
    <message>
        <source>Open a shop from the start page</source>
        <translation>Abrir un taller desde la página de inicio</translation>
    </message>
    <message>
        <source>Open the demo from the start page</source>
        <translation>Abrir la demostración desde la página de inicio</translation>
    </message>
    <message>
        <source>Which shop sews it?</source>
        <translation>¿Qué taller lo borda?</translation>
    </message>
    <message>
        <source>The order is read. To plan it, open the file that describes the shop: its frames, machines and stock. Or drop that file here.</source>
        <translation>El pedido está leído. Para planificarlo, abra el archivo que describe el taller: sus bastidores, máquinas y existencias. O suelte ese archivo aquí.</translation>
    </message>
    <message>
        <source>Where does the design go?</source>
        <translation>¿Dónde va el diseño?</translation>
    </message>
    <message>
        <source>Start or open an order to see for every garment, size and place where the design goes, which frame holds it and what goes behind it. Files can also be dropped here.</source>
        <translation>Empiece o abra un pedido para ver, por cada prenda, talla y ubicación, dónde va el diseño, qué bastidor lo sujeta y qué va detrás. También se pueden soltar archivos aquí.</translation>
    </message>
    <message>
        <source>The demo is not installed here</source>
        <translation>La demostración no está instalada aquí</translation>
    </message>
    <message>
        <source>Recent orders</source>
        <translation>Pedidos recientes</translation>
    </message>
    <message>
        <source>%1   in %2</source>
        <comment>file, folder</comment>
        <translation>%1   en %2</translation>
    </message>
    <message>
        <source>Recent order %1</source>
        <translation>Pedido reciente %1</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::TableCanvas</name>
    <message>
        <source>Table: the garment with design and frame</source>
        <translation>Mesa: la prenda con el diseño y el bastidor</translation>
    </message>
    <message>
        <source>Last good plan, not up to date. %1</source>
        <translation>Último plan válido, no actualizado. %1</translation>
    </message>
    <message>
        <source>Last good plan, not up to date</source>
        <translation>Último plan válido, no actualizado</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::TablePanel</name>
    <message>
        <source>%1 % of true size</source>
        <translation>%1 % del tamaño real</translation>
    </message>
    <message>
        <source>Add a garment to the order, then the places where it is sewn.</source>
        <translation>Añada una prenda al pedido y después las ubicaciones donde se borda.</translation>
    </message>
    <message>
        <source>Open a shop: its frames decide what can be sewn where.</source>
        <translation>Abra un taller: sus bastidores deciden qué se puede bordar y dónde.</translation>
    </message>
    <message>
        <source>The order is being planned.</source>
        <translation>El pedido se está planificando.</translation>
    </message>
    <message>
        <source>Nothing is planned for this line: it needs a place, and a quantity of at least one size.</source>
        <translation>No hay nada planificado para esta línea: necesita una ubicación y la cantidad de al menos una talla.</translation>
    </message>
    <message>
        <source>Part %1</source>
        <translation>Parte %1</translation>
    </message>
    <message>
        <source>Part %1 of %2 of the design</source>
        <translation>Parte %1 de %2 del diseño</translation>
    </message>
    <message>
        <source>Place %1: %2, %3</source>
        <translation>Ubicación %1: %2, %3</translation>
    </message>
    <message>
        <source>Place %1: %2</source>
        <translation>Ubicación %1: %2</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Shows an order planned against a shop.</source>
        <translation>Muestra un pedido planificado para un taller.</translation>
    </message>
    <message>
        <source>An order and a shop to open, in any order.</source>
        <translation>Un pedido y un taller que abrir, en cualquier orden.</translation>
    </message>
</context>
</TS>
