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
        <source>The window stays as it is until then. The plan and the sheets will speak it as well; files stay as they are.</source>
        <translation>Hasta entonces la ventana sigue como está. El plan y las hojas también lo hablarán; los archivos no cambian.</translation>
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
        <source>The garment cannot be added</source>
        <translation>No se puede añadir la prenda</translation>
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
        <source>&amp;Take it up again</source>
        <translation>&amp;Recuperarlo</translation>
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
    <message>
        <source>The words of the trade cannot be shown</source>
        <translation>No se pueden mostrar los términos del oficio</translation>
    </message>
    <message>
        <source>New garment…</source>
        <translation>Prenda nueva…</translation>
    </message>
    <message>
        <source>With a new design…</source>
        <translation>Con un diseño nuevo…</translation>
    </message>
    <message>
        <source>&amp;One by one…</source>
        <translation>&amp;Uno por uno…</translation>
    </message>
    <message>
        <source>The shop was not saved</source>
        <translation>El taller no se guardó</translation>
    </message>
    <message>
        <source>The program ended before it could be. What was there at %1 is still here.</source>
        <translation>El programa se cerró antes de poder guardarlo. Aún se conserva lo que había (%1).</translation>
    </message>
    <message>
        <source>That order cannot be used</source>
        <translation>Ese pedido no se puede usar</translation>
    </message>
    <message>
        <source>Save a pattern for orders</source>
        <translation>Guardar un modelo de pedido</translation>
    </message>
    <message>
        <source>The pattern was not saved</source>
        <translation>El modelo no se ha guardado</translation>
    </message>
    <message>
        <source>The plan is on the clipboard as text</source>
        <translation>El plan está en el portapapeles como texto</translation>
    </message>
    <message>
        <source>Export the plan</source>
        <translation>Exportar el plan</translation>
    </message>
    <message>
        <source>Plans (*.plan.json)</source>
        <translation>Planes (*.plan.json)</translation>
    </message>
    <message>
        <source>The plan was not exported</source>
        <translation>El plan no se ha exportado</translation>
    </message>
    <message>
        <source>Somebody else changed the shop, too</source>
        <translation>Otra persona también ha cambiado el taller</translation>
    </message>
    <message>
        <source>What its file says counts now. Undo brings yours back.</source>
        <translation>Ahora vale lo que dice su archivo. Con Deshacer se recuperan los cambios de usted.</translation>
    </message>
    <message>
        <source>The shop has changes that are not saved. Save them?</source>
        <translation>El taller tiene cambios sin guardar. ¿Quiere guardarlos?</translation>
    </message>
    <message>
        <source>Save the shop</source>
        <translation>Guardar el taller</translation>
    </message>
    <message>
        <source>Shops (*.shop.json)</source>
        <translation>Talleres (*.shop.json)</translation>
    </message>
    <message>
        <source>Not saved yet: somebody else saved this shop</source>
        <translation>Aún sin guardar: otra persona ha guardado este taller</translation>
    </message>
    <message>
        <source>%1. It is being read again; look at it, then save again.</source>
        <translation>%1. Se está volviendo a leer; revíselo y vuelva a guardar.</translation>
    </message>
    <message>
        <source>There is nothing to print yet</source>
        <translation>Todavía no hay nada que imprimir</translation>
    </message>
    <message>
        <source>The steps before this one make the plan that the sheets show.</source>
        <translation>Los pasos anteriores a este hacen el plan que muestran las hojas.</translation>
    </message>
    <message>
        <source>%1 was changed by somebody else; taken over: %2. Undo takes it back.</source>
        <translation>Otra persona ha cambiado %1; se ha incorporado: %2. Con Deshacer se revierte.</translation>
    </message>
    <message>
        <source>Why it is as it is stands here as soon as it is planned.</source>
        <translation>Aquí se explica el porqué en cuanto esté planificado.</translation>
    </message>
    <message>
        <source>&amp;Open it</source>
        <translation>&amp;Abrir</translation>
    </message>
    <message>
        <source>Open its &amp;folder</source>
        <translation>Abrir su &amp;carpeta</translation>
    </message>
    <message>
        <source>Discard it</source>
        <translation>Descartar</translation>
    </message>
    <message>
        <source>Compare…</source>
        <translation>Comparar…</translation>
    </message>
    <message>
        <source>Compare with another size</source>
        <translation>Comparar con otra talla</translation>
    </message>
    <message>
        <source>There is no other size</source>
        <translation>No hay otra talla</translation>
    </message>
    <message>
        <source>&amp;Bring mine back</source>
        <translation>&amp;Recuperar lo mío</translation>
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
    <name>creaseline::desk::CatalogueWords</name>
    <message>
        <source>Pit to pit</source>
        <translation>Ancho de axila a axila</translation>
    </message>
    <message>
        <source>Body length</source>
        <translation>Largo del cuerpo</translation>
    </message>
    <message>
        <source>Neck width</source>
        <translation>Ancho del escote</translation>
    </message>
    <message>
        <source>Front neck drop</source>
        <translation>Profundidad del escote delantero</translation>
    </message>
    <message>
        <source>Back neck drop</source>
        <translation>Profundidad del escote trasero</translation>
    </message>
    <message>
        <source>Shoulder width</source>
        <translation>Ancho de hombros</translation>
    </message>
    <message>
        <source>Shoulder drop</source>
        <translation>Caída del hombro</translation>
    </message>
    <message>
        <source>Armhole depth</source>
        <translation>Profundidad de la sisa</translation>
    </message>
    <message>
        <source>Sleeve length</source>
        <translation>Largo de la manga</translation>
    </message>
    <message>
        <source>Sleeve width</source>
        <translation>Ancho de la manga</translation>
    </message>
    <message>
        <source>Cuff width</source>
        <translation>Ancho del puño</translation>
    </message>
    <message>
        <source>Hem rib height</source>
        <translation>Alto del canalé del bajo</translation>
    </message>
    <message>
        <source>Cuff height</source>
        <translation>Alto del puño</translation>
    </message>
    <message>
        <source>Hood height</source>
        <translation>Alto de la capucha</translation>
    </message>
    <message>
        <source>Hood depth</source>
        <translation>Profundidad de la capucha</translation>
    </message>
    <message>
        <source>Pocket width</source>
        <translation>Ancho del bolsillo</translation>
    </message>
    <message>
        <source>Pocket top width</source>
        <translation>Ancho superior del bolsillo</translation>
    </message>
    <message>
        <source>Pocket height</source>
        <translation>Alto del bolsillo</translation>
    </message>
    <message>
        <source>Pocket above hem</source>
        <translation>Bolsillo por encima del bajo</translation>
    </message>
    <message>
        <source>Placket length</source>
        <translation>Largo de la tapeta</translation>
    </message>
    <message>
        <source>Placket width</source>
        <translation>Ancho de la tapeta</translation>
    </message>
    <message>
        <source>Collar height</source>
        <translation>Alto del cuello</translation>
    </message>
    <message>
        <source>Zip width</source>
        <translation>Ancho de la cremallera</translation>
    </message>
    <message>
        <source>Zip length</source>
        <translation>Largo de la cremallera</translation>
    </message>
    <message>
        <source>Yoke depth</source>
        <translation>Alto del canesú</translation>
    </message>
    <message>
        <source>Pocket from centre</source>
        <translation>Bolsillo desde el centro</translation>
    </message>
    <message>
        <source>Pocket below shoulder</source>
        <translation>Bolsillo por debajo del hombro</translation>
    </message>
    <message>
        <source>Leg rise</source>
        <translation>Alto de la abertura de pierna</translation>
    </message>
    <message>
        <source>Crotch width</source>
        <translation>Ancho de la entrepierna</translation>
    </message>
    <message>
        <source>Top width</source>
        <translation>Ancho superior</translation>
    </message>
    <message>
        <source>Shaped depth</source>
        <translation>Alto de la parte con forma</translation>
    </message>
    <message>
        <source>Border height</source>
        <translation>Alto de la cenefa</translation>
    </message>
    <message>
        <source>Border above hem</source>
        <translation>Cenefa por encima del bajo</translation>
    </message>
    <message>
        <source>Strap from centre</source>
        <translation>Asa desde el centro</translation>
    </message>
    <message>
        <source>Waist width</source>
        <translation>Ancho de cintura</translation>
    </message>
    <message>
        <source>Front rise</source>
        <translation>Tiro delantero</translation>
    </message>
    <message>
        <source>Thigh width</source>
        <translation>Ancho del muslo</translation>
    </message>
    <message>
        <source>Leg hem width</source>
        <translation>Ancho del bajo de la pierna</translation>
    </message>
    <message>
        <source>Waistband height</source>
        <translation>Alto de la cinturilla</translation>
    </message>
    <message>
        <source>Full width</source>
        <translation>Ancho total</translation>
    </message>
    <message>
        <source>Hip width</source>
        <translation>Ancho de cadera</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Infant</source>
        <translation>Bebé</translation>
    </message>
    <message>
        <source>Youth</source>
        <translation>Juvenil</translation>
    </message>
    <message>
        <source>Adult up to XL</source>
        <translation>Adulto hasta XL</translation>
    </message>
    <message>
        <source>Adult above XL</source>
        <translation>Adulto por encima de XL</translation>
    </message>
    <message>
        <source>Woven</source>
        <translation>Tejido plano</translation>
    </message>
    <message>
        <source>Knit</source>
        <translation>Tejido de punto</translation>
    </message>
    <message>
        <source>Nonwoven</source>
        <translation>No tejido</translation>
    </message>
    <message>
        <source>Smooth</source>
        <translation>Liso</translation>
    </message>
    <message>
        <source>Brushed inside</source>
        <translation>Perchado por dentro</translation>
    </message>
    <message>
        <source>Textured</source>
        <translation>Con textura</translation>
    </message>
    <message>
        <source>Loops</source>
        <translation>Rizo</translation>
    </message>
    <message>
        <source>High pile</source>
        <translation>Pelo largo</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>Some</source>
        <translation>Alguna</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Alta</translation>
    </message>
    <message>
        <source>Placement line</source>
        <translation>Línea de colocación</translation>
    </message>
    <message>
        <source>Tack-down</source>
        <translation>Fijación</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Cobertura</translation>
    </message>
    <message>
        <source>Sewing</source>
        <translation>Bordado</translation>
    </message>
    <message>
        <source>Larger centre letter</source>
        <translation>Letra central más grande</translation>
    </message>
    <message>
        <source>Equal letters</source>
        <translation>Letras iguales</translation>
    </message>
    <message>
        <source>Rectangle of its size</source>
        <translation>Rectángulo de su tamaño</translation>
    </message>
    <message>
        <source>Shapes kept with the design</source>
        <translation>Formas guardadas con el diseño</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Dibujo</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Imagen</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::ChangedParts</name>
    <message>
        <source>head of the order</source>
        <translation>encabezado del pedido</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>garment %1</source>
        <translation>prenda %1</translation>
    </message>
    <message>
        <source>design %1</source>
        <translation>diseño %1</translation>
    </message>
    <message>
        <source>the sequence</source>
        <translation>el orden</translation>
    </message>
    <message>
        <source>name or units</source>
        <translation>nombre o unidades</translation>
    </message>
    <message>
        <source>frames</source>
        <translation>bastidores</translation>
    </message>
    <message>
        <source>machines</source>
        <translation>máquinas</translation>
    </message>
    <message>
        <source>backing</source>
        <translation>estabilizador</translation>
    </message>
    <message>
        <source>needles</source>
        <translation>agujas</translation>
    </message>
    <message>
        <source>hooping errors</source>
        <translation>errores al poner en el bastidor</translation>
    </message>
    <message>
        <source>house rules</source>
        <translation>normas propias</translation>
    </message>
    <message>
        <source>rates</source>
        <translation>tarifas</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <comment>parts</comment>
        <translation>
            <numerusform>%1 y %n más</numerusform>
            <numerusform>%1 y %n más</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>creaseline::desk::ChartImportDialog</name>
    <message>
        <source>inches</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>centímetros</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>milímetros</translation>
    </message>
    <message>
        <source>Size chart from %1</source>
        <translation>Tabla de tallas de %1</translation>
    </message>
    <message>
        <source>Say over each column what it holds. Nothing is taken until every column is clear.</source>
        <translation>Indique encima de cada columna qué contiene. No se toma nada hasta que todas las columnas estén claras.</translation>
    </message>
    <message>
        <source>P&amp;roblems</source>
        <translation>&amp;Problemas</translation>
    </message>
    <message>
        <source>Problems of the table</source>
        <translation>Problemas de la tabla</translation>
    </message>
    <message>
        <source>&amp;Take the chart</source>
        <translation>&amp;Tomar la tabla</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>&amp;Cancelar</translation>
    </message>
    <message>
        <source>&amp;Unit where no column says one</source>
        <translation>&amp;Unidad donde ninguna columna la indica</translation>
    </message>
    <message>
        <source>Unit where no column says one</source>
        <translation>Unidad donde ninguna columna la indica</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>The sizes stood side by side and have been turned round.</source>
        <translation>Las tallas estaban una al lado de otra y se han pasado a filas.</translation>
    </message>
    <message>
        <source>The table as it was found</source>
        <translation>La tabla tal como se encontró</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Contiene</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>All round</source>
        <translation>Contorno</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Columna %1</translation>
    </message>
    <message>
        <source>Column %1, %2</source>
        <translation>Columna %1, %2</translation>
    </message>
    <message>
        <source>%1: what it holds</source>
        <translation>%1: qué contiene</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Omitir</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Talla</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>%1: unit</source>
        <translation>%1: unidad</translation>
    </message>
    <message>
        <source>as above</source>
        <translation>como arriba</translation>
    </message>
    <message>
        <source>take half</source>
        <translation>tomar la mitad</translation>
    </message>
    <message>
        <source>%1: measured all round, take half</source>
        <translation>%1: medido en todo el contorno, tomar la mitad</translation>
    </message>
    <message>
        <source>Measured all round the garment; half of it is the flat measure</source>
        <translation>Medido en todo el contorno de la prenda; la mitad es la medida en plano</translation>
    </message>
    <message numerus="yes">
        <source>%n size(s) can be taken.</source>
        <translation>
            <numerusform>Se puede tomar %n talla.</numerusform>
            <numerusform>Se pueden tomar %n tallas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Left aside as remarks: line %1.</source>
        <translation>Omitido por ser observaciones: línea %1.</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Línea %1: %2</translation>
    </message>
    <message>
        <source>Line %1, column %2: %3</source>
        <translation>Línea %1, columna %2: %3</translation>
    </message>
    <message>
        <source>Put the columns right, or mend the marked cells.</source>
        <translation>Corrija las columnas o las celdas marcadas.</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::ChartPanel</name>
    <message>
        <source>Size chart</source>
        <translation>Tabla de tallas</translation>
    </message>
    <message>
        <source>Size chart, sizes by points of measure</source>
        <translation>Tabla de tallas, tallas por puntos de medida</translation>
    </message>
    <message>
        <source>Name of the chosen size</source>
        <translation>Nombre de la talla elegida</translation>
    </message>
    <message>
        <source>Band of the chosen size</source>
        <translation>Grupo de la talla elegida</translation>
    </message>
    <message>
        <source>Add a size</source>
        <translation>Añadir una talla</translation>
    </message>
    <message>
        <source>Behind the chosen one, with its measures</source>
        <translation>Después de la elegida, con sus medidas</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove the chosen size</source>
        <translation>Quitar la talla elegida</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Subir</translation>
    </message>
    <message>
        <source>Put the chosen size further up</source>
        <translation>Subir la talla elegida</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Bajar</translation>
    </message>
    <message>
        <source>Put the chosen size further down</source>
        <translation>Bajar la talla elegida</translation>
    </message>
    <message>
        <source>Si&amp;ze</source>
        <translation>Ta&amp;lla</translation>
    </message>
    <message>
        <source>&amp;Band</source>
        <translation>Gru&amp;po</translation>
    </message>
    <message>
        <source>Add a &amp;measure</source>
        <translation>Añadir una &amp;medida</translation>
    </message>
    <message>
        <source>A column for a point of measure that the chart gives besides</source>
        <translation>Una columna para otro punto de medida que dé la tabla</translation>
    </message>
    <message>
        <source>&amp;Paste a chart…</source>
        <translation>Pegar una ta&amp;bla…</translation>
    </message>
    <message>
        <source>From the clipboard, as a spreadsheet puts it there</source>
        <translation>Del portapapeles, tal como lo deja una hoja de cálculo</translation>
    </message>
    <message>
        <source>&amp;Import CSV…</source>
        <translation>Importar CS&amp;V…</translation>
    </message>
    <message>
        <source>From a file of any maker</source>
        <translation>De un archivo de cualquier fabricante</translation>
    </message>
    <message>
        <source>By its name: %1</source>
        <translation>Por su nombre: %1</translation>
    </message>
    <message>
        <source>By its width: %1</source>
        <translation>Por su ancho: %1</translation>
    </message>
    <message>
        <source>Lengths in any unit, such as 20 1/2 in or 52 cm. In brackets: not measured, but proposed or taken as usual for this kind; the plan says so until it is typed over.</source>
        <translation>Longitudes en cualquier unidad, como 20 1/2 in o 52 cm. Entre paréntesis: sin medir, propuesto o tomado como habitual en este tipo; el plan lo indica hasta que se escriba encima.</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::ChartTableModel</name>
    <message>
        <source>Garments of this kind have no use for this measure.</source>
        <translation>Las prendas de este tipo no usan esta medida.</translation>
    </message>
    <message>
        <source>Not in the chart; taken as usual for this kind: %1</source>
        <translation>No está en la tabla; se toma lo habitual en este tipo: %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>measure, size</comment>
        <translation>%1, talla %2</translation>
    </message>
    <message>
        <source>Every chart needs this measure</source>
        <translation>Toda tabla necesita esta medida</translation>
    </message>
    <message>
        <source>Only proposed: measure a garment and type over it.</source>
        <translation>Solo propuesto: mida una prenda y escriba encima.</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::CheckedTable</name>
    <message>
        <source>Not taken: %1</source>
        <translation>No aceptado: %1</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::CheckedTableModel</name>
    <message>
        <source>%1, row %2</source>
        <comment>column, number</comment>
        <translation>%1, fila %2</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::ConflictsWindow</name>
    <message>
        <source>Changed here and in the file</source>
        <translation>Cambiado aquí y en el archivo</translation>
    </message>
    <message>
        <source>Somebody else changed these in the order&apos;s file while you changed them here. Decide for each which one counts.</source>
        <translation>Otra persona cambió esto en el archivo del pedido mientras usted lo cambiaba aquí. Decida en cada caso qué vale.</translation>
    </message>
    <message>
        <source>&amp;Count these</source>
        <translation>&amp;Aplicar lo elegido</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>place, value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>here: %1</source>
        <translation>aquí: %1</translation>
    </message>
    <message>
        <source>in the file: %1</source>
        <translation>en el archivo: %1</translation>
    </message>
    <message>
        <source>&amp;Not now</source>
        <translation>A&amp;hora no</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::CutView</name>
    <message>
        <source>How the backing is cut</source>
        <translation>Cómo se corta el estabilizador</translation>
    </message>
    <message>
        <source>%1, roll %2 wide</source>
        <comment>stock, width</comment>
        <translation>%1, rollo de %2 de ancho</translation>
    </message>
    <message>
        <source>%1, sheets of %2</source>
        <comment>stock, size</comment>
        <translation>%1, hojas de %2</translation>
    </message>
    <message>
        <source>%1: takes at most %2</source>
        <comment>stock, need</comment>
        <translation>%1: consume como mucho %2</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) of %1</source>
        <translation>
            <numerusform>%n pieza de %1</numerusform>
            <numerusform>%n piezas de %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: larger than what is in stock</source>
        <translation>%1: más grande que lo que hay en existencias</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s)</source>
        <translation>
            <numerusform>%n fila</numerusform>
            <numerusform>%n filas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 beside each other in %3</source>
        <comment>pieces, number, rows</comment>
        <translation>%1, %2 por fila en %3</translation>
    </message>
    <message>
        <source>%1; takes %2 of the roll</source>
        <translation>%1; consume %2 del rollo</translation>
    </message>
    <message numerus="yes">
        <source>%1 on %n sheet(s)</source>
        <translation>
            <numerusform>%1 en %n hoja</numerusform>
            <numerusform>%1 en %n hojas</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is cut from backing in stock.</source>
        <translation>No se corta nada del estabilizador en existencias.</translation>
    </message>
    <message>
        <source>%1 %2, more than there is</source>
        <comment>shape, stock and need</comment>
        <translation>%1 %2, más de lo que hay</translation>
    </message>
    <message>
        <source>Each size is cut for itself in straight rows; better cutting takes less.</source>
        <translation>Cada medida se corta aparte, en filas rectas; con un corte mejor se consume menos.</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::DayBar</name>
    <message>
        <source>%1  %2</source>
        <comment>number of a run, place</comment>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>run %1, %2: %3</source>
        <comment>number, place, time</comment>
        <translation>tanda %1, %2: %3</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>Runs in order, as long as they take, in hours at the machine</source>
        <translation>Tandas en orden, tan largas como duran, en horas de máquina</translation>
    </message>
    <message>
        <source>chosen: %1</source>
        <comment>a run</comment>
        <translation>elegida: %1</translation>
    </message>
    <message>
        <source>%1 h</source>
        <comment>hours at the machine since the start</comment>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>hours at the machine, one run after the other; hatched: setting up</source>
        <translation>horas de máquina, una tanda tras otra; rayado: preparación</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::DesignEdits</name>
    <message>
        <source>Add a thread block to %1</source>
        <translation>Añadir un bloque de hilo a %1</translation>
    </message>
    <message>
        <source>black</source>
        <comment>thread</comment>
        <translation>negro</translation>
    </message>
    <message>
        <source>Take the block in %1 out of %2</source>
        <comment>thread, design</comment>
        <translation>Quitar de %2 el bloque en %1</translation>
    </message>
    <message>
        <source>Sew the block in %1 of %2 earlier</source>
        <translation>Bordar antes el bloque en %1 de %2</translation>
    </message>
    <message>
        <source>Sew the block in %1 of %2 later</source>
        <translation>Bordar después el bloque en %1 de %2</translation>
    </message>
    <message>
        <source>%1 belongs to an appliqué piece; add the piece first</source>
        <translation>%1: pertenece a una pieza de aplicación; añada antes la pieza</translation>
    </message>
    <message>
        <source>All blocks together: %1</source>
        <translation>Todos los bloques juntos: %1</translation>
    </message>
    <message>
        <source>block %1 of %2</source>
        <comment>number, design</comment>
        <translation>bloque %1 de %2</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Cambiar %1</translation>
    </message>
    <message>
        <source>Thread of %1: %2</source>
        <translation>Hilo de %1: %2</translation>
    </message>
    <message>
        <source>Colour of %1: %2</source>
        <translation>Color de %1: %2</translation>
    </message>
    <message>
        <source>Stitches of %1: %2</source>
        <translation>Puntadas de %1: %2</translation>
    </message>
    <message>
        <source>What %1 does: %2</source>
        <comment>block, kind</comment>
        <translation>Función de %1: %2</translation>
    </message>
    <message>
        <source>%1 is for every piece</source>
        <translation>%1 es para todas las piezas</translation>
    </message>
    <message>
        <source>%1 is for piece %2</source>
        <translation>%1 es para la pieza %2</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>pieza</translation>
    </message>
    <message>
        <source>Add an appliqué piece to %1</source>
        <translation>Añadir una pieza de aplicación a %1</translation>
    </message>
    <message>
        <source>twill</source>
        <translation>sarga</translation>
    </message>
    <message>
        <source>It is the last piece, and there are blocks that place, tack or cover one. Make them plain sewing, or remove them first.</source>
        <translation>Es la última pieza y hay bloques que colocan, fijan o cubren una. Conviértalos en bordado normal o quítelos antes.</translation>
    </message>
    <message>
        <source>Take piece %1 out of %2</source>
        <translation>Quitar de %2 la pieza %1</translation>
    </message>
    <message>
        <source>Put piece %1 further up</source>
        <translation>Subir la pieza %1</translation>
    </message>
    <message>
        <source>Put piece %1 further down</source>
        <translation>Bajar la pieza %1</translation>
    </message>
    <message>
        <source>Piece %1 becomes %2</source>
        <translation>La pieza %1 pasa a ser %2</translation>
    </message>
    <message>
        <source>Fabric of piece %1: %2</source>
        <translation>Tela de la pieza %1: %2</translation>
    </message>
    <message>
        <source>Width of piece %1: %2</source>
        <translation>Ancho de la pieza %1: %2</translation>
    </message>
    <message>
        <source>Height of piece %1: %2</source>
        <translation>Alto de la pieza %1: %2</translation>
    </message>
    <message>
        <source>A monogram needs a first name and a surname</source>
        <translation>Un monograma necesita nombre y apellido</translation>
    </message>
    <message>
        <source>A larger centre letter needs a middle name, or the customer&apos;s wish</source>
        <translation>Una letra central más grande necesita un segundo nombre o el deseo del cliente</translation>
    </message>
    <message>
        <source>Monogram %1: %2 %3 %4</source>
        <comment>design, names</comment>
        <translation>Monograma de %1: %2 %3 %4</translation>
    </message>
    <message>
        <source>%1 is no monogram</source>
        <translation>%1 no es un monograma</translation>
    </message>
    <message>
        <source>New design</source>
        <translation>Diseño nuevo</translation>
    </message>
    <message>
        <source>Take up %1</source>
        <translation>Incorporar %1</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translation>Duplicar %1</translation>
    </message>
    <message>
        <source>%1, copy</source>
        <translation>%1, copia</translation>
    </message>
    <message numerus="yes">
        <source>%1 is sewn on line(s) %2 of the order. Give the places there another design, or remove them first.</source>
        <translation>
            <numerusform>%1 se borda en la línea %2 del pedido. Asigne antes otro diseño a esas ubicaciones o quítelas.</numerusform>
            <numerusform>%1 se borda en las líneas %2 del pedido. Asigne antes otro diseño a esas ubicaciones o quítelas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Call %1 %2</source>
        <comment>name, name</comment>
        <translation>Llamar %2 a %1</translation>
    </message>
    <message>
        <source>Id of %1: %2</source>
        <translation>Id de %1: %2</translation>
    </message>
    <message>
        <source>Line %1 sews it at %2 %: %3</source>
        <translation>La línea %1 lo borda al %2 %: %3</translation>
    </message>
    <message>
        <source>the other side, in proportion, would be larger than any garment</source>
        <translation>el otro lado, en proporción, sería más grande que cualquier prenda</translation>
    </message>
    <message>
        <source>the other side, in proportion: %1</source>
        <translation>el otro lado, en proporción: %1</translation>
    </message>
    <message>
        <source>Width of %1: %2</source>
        <translation>Ancho de %1: %2</translation>
    </message>
    <message>
        <source>Height of %1: %2</source>
        <translation>Alto de %1: %2</translation>
    </message>
    <message>
        <source>Width of %1: %2, in proportion</source>
        <translation>Ancho de %1: %2, en proporción</translation>
    </message>
    <message>
        <source>Height of %1: %2, in proportion</source>
        <translation>Alto de %1: %2, en proporción</translation>
    </message>
    <message>
        <source>There is no closed shape in it</source>
        <translation>No contiene ninguna forma cerrada</translation>
    </message>
    <message>
        <source>It is larger than any garment</source>
        <translation>Es más grande que cualquier prenda</translation>
    </message>
    <message>
        <source>Outline of %1 from %2</source>
        <translation>Contorno de %1 desde %2</translation>
    </message>
    <message>
        <source>Outline of %1: a rectangle of its size</source>
        <translation>Contorno de %1: un rectángulo de su tamaño</translation>
    </message>
    <message>
        <source>Its sides are %1 and %2: %3</source>
        <translation>Sus lados miden %1 y %2: %3</translation>
    </message>
    <message>
        <source>Blocks are for this piece alone (%1); give them another piece, or remove them first.</source>
        <translation>Hay bloques solo para esta pieza (%1); asígneles otra o quítelos antes.</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::DesignForm</name>
    <message>
        <source>write a number from 1 to 10000, such as 300, or nothing</source>
        <translation>escriba un número de 1 a 10000, por ejemplo 300, o nada</translation>
    </message>
    <message>
        <source>Design</source>
        <translation>Diseño</translation>
    </message>
    <message>
        <source>Name of the design</source>
        <translation>Nombre del diseño</translation>
    </message>
    <message>
        <source>Id of the design, by which orders refer to it</source>
        <translation>Id del diseño, con el que los pedidos se refieren a él</translation>
    </message>
    <message>
        <source>Width of the design</source>
        <translation>Ancho del diseño</translation>
    </message>
    <message>
        <source>Height of the design</source>
        <translation>Alto del diseño</translation>
    </message>
    <message>
        <source>&amp;Keep the proportion</source>
        <translation>&amp;Mantener la proporción</translation>
    </message>
    <message>
        <source>Stitches of the design</source>
        <translation>Puntadas del diseño</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Id</source>
        <translation>&amp;Id</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>An&amp;cho</translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <translation>Al&amp;to</translation>
    </message>
    <message>
        <source>&amp;Stitches</source>
        <translation>&amp;Puntadas</translation>
    </message>
    <message>
        <source>Outline</source>
        <translation>Contorno</translation>
    </message>
    <message>
        <source>Rec&amp;tangle</source>
        <translation>Rectángu&amp;lo</translation>
    </message>
    <message>
        <source>The rectangle of the design&apos;s size</source>
        <translation>El rectángulo del tamaño del diseño</translation>
    </message>
    <message>
        <source>From S&amp;VG…</source>
        <translation>De S&amp;VG…</translation>
    </message>
    <message>
        <source>From a drawing with its size in millimetres or inches</source>
        <translation>De un dibujo con su tamaño en milímetros o pulgadas</translation>
    </message>
    <message>
        <source>From &amp;PNG…</source>
        <translation>D&amp;e PNG…</translation>
    </message>
    <message>
        <source>From the opaque part of a picture</source>
        <translation>De la parte opaca de una imagen</translation>
    </message>
    <message>
        <source>Dots per inch of a picture; nothing where the picture says so itself</source>
        <translation>Puntos por pulgada de una imagen; nada si la propia imagen los indica</translation>
    </message>
    <message>
        <source>its own</source>
        <translation>los propios</translation>
    </message>
    <message>
        <source>Dots per inch of a PNG</source>
        <translation>Puntos por pulgada de un PNG</translation>
    </message>
    <message>
        <source>&amp;Monogram</source>
        <translation>Mono&amp;grama</translation>
    </message>
    <message>
        <source>First name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Middle name</source>
        <translation>Segundo nombre</translation>
    </message>
    <message>
        <source>Surname</source>
        <translation>Apellido</translation>
    </message>
    <message>
        <source>Letters as the customer wishes them</source>
        <translation>Letras como las desea el cliente</translation>
    </message>
    <message>
        <source>by the rule</source>
        <translation>según la norma</translation>
    </message>
    <message>
        <source>Style of the monogram</source>
        <translation>Estilo del monograma</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Segundo</translation>
    </message>
    <message>
        <source>Style</source>
        <translation>Estilo</translation>
    </message>
    <message>
        <source>Wish</source>
        <translation>Deseo</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>drawing or picture, its file</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Of all sewing together, edge to edge</source>
        <translation>De todo el bordado junto, de borde a borde</translation>
    </message>
    <message>
        <source>As large as the outline&apos;s file says</source>
        <translation>Tan grande como dice el archivo del contorno</translation>
    </message>
    <message>
        <source>Of the whole design, without thread blocks</source>
        <translation>De todo el diseño, sin bloques de hilo</translation>
    </message>
    <message>
        <source>The sum of the thread blocks</source>
        <translation>La suma de los bloques de hilo</translation>
    </message>
    <message>
        <source>Width at which the picture&apos;s design is sewn</source>
        <translation>Ancho al que se borda el diseño de la imagen</translation>
    </message>
    <message>
        <source>%1 does not say how large it is. How wide is its design sewn, from edge to edge of what is opaque? Type a length, such as 3 1/2 in or 90 mm; or type its dots per inch above.</source>
        <translation>%1 no dice qué tamaño tiene. ¿A qué ancho se borda su diseño, de borde a borde de lo opaco? Escriba una longitud, como 3 1/2 in o 90 mm, o escriba arriba sus puntos por pulgada.</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::DesignTables</name>
    <message>
        <source>No blocks: the design has one total of stitches. A block that is added takes it over.</source>
        <translation>Sin bloques: el diseño tiene un solo total de puntadas. Un bloque que se añada lo asume.</translation>
    </message>
    <message>
        <source>In sewing order. Together %1 stitches, the design&apos;s total.</source>
        <translation>En secuencia de bordado. Juntos, %1 puntadas, el total del diseño.</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Hilo</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Stitches</source>
        <translation>Puntadas</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Choose one of the list</source>
        <translation>Elija uno de la lista</translation>
    </message>
    <message>
        <source>every</source>
        <comment>appliqué piece</comment>
        <translation>todas</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Thread blocks</source>
        <translation>Bloques de hilo</translation>
    </message>
    <message>
        <source>thread block</source>
        <translation>bloque de hilo</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Fabric</source>
        <translation>Tela</translation>
    </message>
    <message>
        <source>Appliqué pieces</source>
        <translation>Piezas de aplicación</translation>
    </message>
    <message>
        <source>appliqué piece</source>
        <translation>pieza de aplicación</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Cut from fabric, laid on and covered by the blocks above.</source>
        <translation>Cortadas de tela, colocadas encima y cubiertas por los bloques de arriba.</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::DesignsWindow</name>
    <message>
        <source>Desi&amp;gns</source>
        <translation>Di&amp;seños</translation>
    </message>
    <message>
        <source>&amp;New design</source>
        <translation>Diseño &amp;nuevo</translation>
    </message>
    <message>
        <source>From a &amp;file…</source>
        <translation>De un &amp;archivo…</translation>
    </message>
    <message>
        <source>Duplicate the design</source>
        <translation>Duplicar el diseño</translation>
    </message>
    <message>
        <source>Remove the design from the order</source>
        <translation>Quitar el diseño del pedido</translation>
    </message>
    <message>
        <source>The order has no designs yet. Add a new one, or one from a file.</source>
        <translation>El pedido aún no tiene diseños. Añada uno nuevo o uno de un archivo.</translation>
    </message>
    <message>
        <source>The monogram stays as it is</source>
        <translation>El monograma se queda como está</translation>
    </message>
    <message numerus="yes">
        <source>%1 × %2, %n stitch(es)</source>
        <comment>width, height</comment>
        <translation>
            <numerusform>%1 × %2, %n puntada</numerusform>
            <numerusform>%1 × %2, %n puntadas</numerusform>
        </translation>
    </message>
    <message>
        <source>The order has this design already</source>
        <translation>El pedido ya tiene este diseño</translation>
    </message>
    <message>
        <source>A design with the id “%1” is in the list. Duplicate that one, or give it another id first.</source>
        <translation>En la lista hay un diseño con el id «%1». Duplique ese o dele antes otro id.</translation>
    </message>
    <message>
        <source>The design cannot be added</source>
        <translation>No se puede añadir el diseño</translation>
    </message>
    <message>
        <source>The design stays in the order</source>
        <translation>El diseño sigue en el pedido</translation>
    </message>
    <message>
        <source>Save the design to a file of its own</source>
        <translation>Guardar el diseño en un archivo propio</translation>
    </message>
    <message>
        <source>The design was not saved there</source>
        <translation>El diseño no se ha guardado ahí</translation>
    </message>
    <message>
        <source>Save the order first, so that the path to its outline is known.</source>
        <translation>Guarde antes el pedido, para que se conozca la ruta a su contorno.</translation>
    </message>
    <message>
        <source>Its outline is in %1. Save the design in %2, from where the path to it leads.</source>
        <translation>Su contorno está en %1. Guarde el diseño en %2, desde donde parte la ruta hasta él.</translation>
    </message>
    <message>
        <source>%1 has a file of its own</source>
        <translation>%1 tiene un archivo propio</translation>
    </message>
    <message>
        <source>%1. Save the order as well, so that it refers to the file.</source>
        <translation>%1. Guarde también el pedido, para que haga referencia al archivo.</translation>
    </message>
    <message>
        <source>The design was not saved</source>
        <translation>El diseño no se ha guardado</translation>
    </message>
    <message>
        <source>Outline from a drawing</source>
        <translation>Contorno de un dibujo</translation>
    </message>
    <message>
        <source>Outline from a picture</source>
        <translation>Contorno de una imagen</translation>
    </message>
    <message>
        <source>Drawings (*.svg)</source>
        <translation>Dibujos (*.svg)</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Imágenes (*.png)</translation>
    </message>
    <message>
        <source>The outline cannot be taken</source>
        <translation>No se puede tomar el contorno</translation>
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
    <message>
        <source>&amp;Words of the trade</source>
        <translation>&amp;Términos del oficio</translation>
    </message>
    <message>
        <source>G&amp;arments and size charts…</source>
        <translation>Prend&amp;as y tablas de tallas…</translation>
    </message>
    <message>
        <source>De&amp;signs…</source>
        <translation>D&amp;iseños…</translation>
    </message>
    <message>
        <source>Back to the ru&amp;le</source>
        <translation>&amp;Volver a la norma</translation>
    </message>
    <message>
        <source>Another windo&amp;w</source>
        <translation>&amp;Otra ventana</translation>
    </message>
    <message>
        <source>&amp;Find an order…</source>
        <translation>&amp;Buscar un pedido…</translation>
    </message>
    <message>
        <source>Start a cop&amp;y of the order</source>
        <translation>Em&amp;pezar una copia del pedido</translation>
    </message>
    <message>
        <source>Save as a &amp;pattern for orders…</source>
        <translation>Guardar como &amp;modelo de pedido…</translation>
    </message>
    <message>
        <source>Runs and m&amp;aterials…</source>
        <translation>Ta&amp;ndas y materiales…</translation>
    </message>
    <message>
        <source>&amp;Copy the plan as text</source>
        <translation>&amp;Copiar el plan como texto</translation>
    </message>
    <message>
        <source>E&amp;xport the plan as JSON…</source>
        <translation>E&amp;xportar el plan como JSON…</translation>
    </message>
    <message>
        <source>Descri&amp;be a new shop</source>
        <translation>D&amp;escribir un taller nuevo</translation>
    </message>
    <message>
        <source>S&amp;hop: frames, machines, stock…</source>
        <translation>&amp;Taller: bastidores, máquinas, existencias…</translation>
    </message>
    <message>
        <source>&amp;Guide to an order</source>
        <translation>&amp;Guía para un pedido</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>C&amp;lara</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscura</translation>
    </message>
    <message>
        <source>A&amp;ppearance</source>
        <translation>Aparien&amp;cia</translation>
    </message>
    <message>
        <source>&amp;Compare with size</source>
        <translation>C&amp;omparar con la talla</translation>
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
    <message>
        <source>Take over what the shop&apos;s file says</source>
        <translation>Incorporar lo que dice el archivo del taller</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::EntryPage</name>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>%1 (not used)</source>
        <comment>entry of the shop</comment>
        <translation>%1 (no se usa)</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::EntryTable</name>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Add a %1</source>
        <translation>Añadir: %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove the %1</source>
        <translation>Quitar: %1</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Subir</translation>
    </message>
    <message>
        <source>Put the %1 further up</source>
        <translation>Subir: %1</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Bajar</translation>
    </message>
    <message>
        <source>Put the %1 further down</source>
        <translation>Bajar: %1</translation>
    </message>
    <message>
        <source>Colour…</source>
        <translation>Color…</translation>
    </message>
    <message>
        <source>Pick the %1&apos;s colour</source>
        <translation>Elegir el color: %1</translation>
    </message>
    <message>
        <source>Pick a colour</source>
        <translation>Elegir un color</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::FileQuestions</name>
    <message>
        <source>Add a garment</source>
        <translation>Añadir una prenda</translation>
    </message>
    <message>
        <source>Garments (*.blank.json);;JSON files (*.json)</source>
        <translation>Prendas (*.blank.json);;Archivos JSON (*.json)</translation>
    </message>
    <message>
        <source>Add a design</source>
        <translation>Añadir un diseño</translation>
    </message>
    <message>
        <source>Designs (*.design.json);;JSON files (*.json)</source>
        <translation>Diseños (*.design.json);;Archivos JSON (*.json)</translation>
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
    <message>
        <source>Nothing is ordered yet: a line needs quantities and a place.</source>
        <translation>Todavía no se pide nada: una línea necesita cantidades y un lugar.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>reason: its source</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Open the house rule…</source>
        <translation>Abrir la norma propia…</translation>
    </message>
    <message>
        <source>Go there</source>
        <translation>Ir allí</translation>
    </message>
    <message>
        <source>Opens the window in which it is entered</source>
        <translation>Abre la ventana en la que se escribe</translation>
    </message>
    <message>
        <source>Go to where it is entered: %1</source>
        <translation>Ir a donde se escribe: %1</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::FormParts</name>
    <message>
        <source>“%1” is not a colour; write # and six hexadecimal digits, or an English name such as navy</source>
        <translation>«%1» no es un color; escriba # y seis cifras hexadecimales, o un nombre en inglés como navy</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::FrameForm</name>
    <message>
        <source>Magnetic</source>
        <translation>Magnético</translation>
    </message>
    <message>
        <source>Screw</source>
        <translation>De tornillo</translation>
    </message>
    <message>
        <source>Clamp</source>
        <translation>De pinza</translation>
    </message>
    <message>
        <source>On top</source>
        <translation>Arriba</translation>
    </message>
    <message>
        <source>At the bottom</source>
        <translation>Abajo</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Left and right</source>
        <translation>Izquierda y derecha</translation>
    </message>
    <message>
        <source>name at least one turn, such as 0</source>
        <translation>indique al menos un giro, por ejemplo 0</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>Name of the frame</source>
        <translation>Nombre del bastidor</translation>
    </message>
    <message>
        <source>&amp;Id</source>
        <translation>&amp;Id</translation>
    </message>
    <message>
        <source>Id of the frame, distinct in the shop</source>
        <translation>Id del bastidor, único en el taller</translation>
    </message>
    <message>
        <source>&amp;On hand</source>
        <translation>&amp;Disponibles</translation>
    </message>
    <message>
        <source>How many of this frame the shop has</source>
        <translation>Cuántos bastidores como este tiene el taller</translation>
    </message>
    <message>
        <source>Write a whole number, such as 2</source>
        <translation>Escriba un número entero, por ejemplo 2</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Tipo</translation>
    </message>
    <message>
        <source>How the frame holds the cloth</source>
        <translation>Cómo sujeta la tela el bastidor</translation>
    </message>
    <message>
        <source>Body: outside edge of both rings</source>
        <translation>Cuerpo: borde exterior de ambos aros</translation>
    </message>
    <message>
        <source>body</source>
        <translation>cuerpo</translation>
    </message>
    <message>
        <source>Window: open inside</source>
        <translation>Ventana: hueco interior</translation>
    </message>
    <message>
        <source>window</source>
        <translation>ventana</translation>
    </message>
    <message>
        <source>&amp;Clearance</source>
        <translation>&amp;Separación</translation>
    </message>
    <message>
        <source>Between the window&apos;s edge and the needle; empty: the usual one</source>
        <translation>Entre el borde de la ventana y la aguja; vacío: la habitual</translation>
    </message>
    <message>
        <source>Sewing field that the machine reaches with this frame</source>
        <translation>Campo de bordado que la máquina alcanza con este bastidor</translation>
    </message>
    <message>
        <source>&amp;Its own, not the machine&apos;s</source>
        <translation>&amp;Propio, no el de la máquina</translation>
    </message>
    <message>
        <source>Whether this frame has a sewing field of its own</source>
        <translation>Si este bastidor tiene un campo de bordado propio</translation>
    </message>
    <message>
        <source>sewing field</source>
        <translation>campo de bordado</translation>
    </message>
    <message>
        <source>&amp;Bracket</source>
        <translation>S&amp;oporte</translation>
    </message>
    <message>
        <source>Side where the bracket meets the machine&apos;s arm</source>
        <translation>Lado en el que el soporte se une al brazo de la máquina</translation>
    </message>
    <message>
        <source>&amp;Turns</source>
        <translation>&amp;Giros</translation>
    </message>
    <message>
        <source>How the frame may lie on the garment, in degrees, such as 0, 90</source>
        <translation>Cómo puede ir el bastidor sobre la prenda, en grados, por ejemplo 0, 90</translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation>Pane&amp;les</translation>
    </message>
    <message>
        <source>Panels that the frame is meant for</source>
        <translation>Paneles para los que está pensado el bastidor</translation>
    </message>
    <message>
        <source>Any panel</source>
        <translation>Cualquier panel</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>normalmente %1</translation>
    </message>
    <message>
        <source>&amp;Margin of cloth</source>
        <translation>&amp;Margen de tela</translation>
    </message>
    <message>
        <source>Cloth needed beyond the body, or beyond the window at an edge that the rings may overhang; empty: none</source>
        <translation>Tela necesaria más allá del cuerpo, o más allá de la ventana en una orilla de la que los aros pueden sobresalir; vacío: ninguna</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation>no hace falta</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::FramePicture</name>
    <message>
        <source>Picture of the frame</source>
        <translation>Imagen del bastidor</translation>
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
    <name>creaseline::desk::GarmentEdits</name>
    <message>
        <source>%1 of %2: %3</source>
        <comment>measure, size, length</comment>
        <translation>%1, talla %2: %3</translation>
    </message>
    <message>
        <source>%1 of %2 not in the chart</source>
        <comment>measure, size</comment>
        <translation>%1, talla %2: no está en la tabla</translation>
    </message>
    <message>
        <source>new</source>
        <comment>size</comment>
        <translation>nueva</translation>
    </message>
    <message>
        <source>Add a size behind %1</source>
        <translation>Añadir una talla después de %1</translation>
    </message>
    <message>
        <source>A chart needs at least one size</source>
        <translation>Una tabla necesita al menos una talla</translation>
    </message>
    <message numerus="yes">
        <source>Size %1 is ordered on line(s) %2. Set the quantity there to 0 first.</source>
        <translation>
            <numerusform>La talla %1 está pedida en la línea %2. Ponga antes a 0 la cantidad de esa línea.</numerusform>
            <numerusform>La talla %1 está pedida en las líneas %2. Ponga antes a 0 la cantidad de esas líneas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Take size %1 out of %2</source>
        <comment>size, garment</comment>
        <translation>Quitar de %2 la talla %1</translation>
    </message>
    <message>
        <source>Put size %1 further up</source>
        <translation>Subir la talla %1</translation>
    </message>
    <message>
        <source>Put size %1 further down</source>
        <translation>Bajar la talla %1</translation>
    </message>
    <message>
        <source>Size %1 of %2 becomes %3</source>
        <translation>La talla %1 de %2 pasa a ser %3</translation>
    </message>
    <message>
        <source>Size %1 counts as %2</source>
        <comment>size, band</comment>
        <translation>La talla %1 cuenta como %2</translation>
    </message>
    <message>
        <source>Size %1 counts as its name tells</source>
        <translation>La talla %1 cuenta como indica su nombre</translation>
    </message>
    <message>
        <source>Size chart of %1</source>
        <translation>Tabla de tallas de %1</translation>
    </message>
    <message numerus="yes">
        <source>, %n size(s) of lines left out</source>
        <translation>
            <numerusform>, se omite %n talla de las líneas</numerusform>
            <numerusform>, se omiten %n tallas de las líneas</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1” is no share of a fibre; write 80 % cotton, 20 % polyester</source>
        <translation>«%1» no es una parte de una fibra; escriba 80 % algodón, 20 % poliéster</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>list, last</comment>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>Size %1 makes no garment: found %2, expected %3</source>
        <translation>La talla %1 no da una prenda: encontrado %2, esperado %3</translation>
    </message>
    <message>
        <source>New garment</source>
        <translation>Prenda nueva</translation>
    </message>
    <message>
        <source>Take up %1</source>
        <translation>Incorporar %1</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translation>Duplicar %1</translation>
    </message>
    <message>
        <source>%1, copy</source>
        <translation>%1, copia</translation>
    </message>
    <message numerus="yes">
        <source>%1 is used on line(s) %2 of the order. Give what stands there another garment, or remove it first.</source>
        <translation>
            <numerusform>%1 se usa en la línea %2 del pedido. Asigne otra prenda a lo que hay ahí, o quítelo antes.</numerusform>
            <numerusform>%1 se usa en las líneas %2 del pedido. Asigne otra prenda a lo que hay ahí, o quítelo antes.</numerusform>
        </translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Call %1 %2</source>
        <comment>name, name</comment>
        <translation>Llamar %2 a %1</translation>
    </message>
    <message>
        <source>Id of %1: %2</source>
        <translation>Id de %1: %2</translation>
    </message>
    <message>
        <source>Kind of %1: %2</source>
        <comment>garment, kind</comment>
        <translation>Tipo de %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>, %n place(s) left out</source>
        <translation>
            <numerusform>, se omite %n ubicación</numerusform>
            <numerusform>, se omiten %n ubicaciones</numerusform>
        </translation>
    </message>
    <message>
        <source>Fabric of %1: %2</source>
        <translation>Tela de %1: %2</translation>
    </message>
    <message>
        <source>Weight of %1: %2</source>
        <translation>Gramaje de %1: %2</translation>
    </message>
    <message>
        <source>Construction of %1: %2</source>
        <translation>Construcción de %1: %2</translation>
    </message>
    <message>
        <source>Pile of %1: %2</source>
        <translation>Pelo de %1: %2</translation>
    </message>
    <message>
        <source>Stretch of %1: %2</source>
        <translation>Elasticidad de %1: %2</translation>
    </message>
    <message>
        <source>%1 is sheer</source>
        <translation>%1 es transparente</translation>
    </message>
    <message>
        <source>%1 is not sheer</source>
        <translation>%1 no es transparente</translation>
    </message>
    <message>
        <source>%1 % %2</source>
        <comment>share, fibre</comment>
        <translation>%1 % %2</translation>
    </message>
    <message>
        <source>Fibres of %1: %2</source>
        <translation>Fibras de %1: %2</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>color</translation>
    </message>
    <message>
        <source>Add a colour to %1</source>
        <translation>Añadir un color a %1</translation>
    </message>
    <message>
        <source>Take %1 out of %2</source>
        <comment>colour, garment</comment>
        <translation>Quitar %1 de %2</translation>
    </message>
    <message numerus="yes">
        <source>, %n line(s) without a colour</source>
        <translation>
            <numerusform>, %n línea queda sin color</numerusform>
            <numerusform>, %n líneas quedan sin color</numerusform>
        </translation>
    </message>
    <message>
        <source>Put %1 further up</source>
        <translation>Subir %1</translation>
    </message>
    <message>
        <source>Put %1 further down</source>
        <translation>Bajar %1</translation>
    </message>
    <message>
        <source>Colour %1 of %2 becomes %3</source>
        <translation>El color %1 de %2 pasa a ser %3</translation>
    </message>
    <message>
        <source>%1 of %2 is %3</source>
        <comment>colour, garment, #rrggbb</comment>
        <translation>%1 de %2 es %3</translation>
    </message>
    <message>
        <source>Price of %1: %2</source>
        <translation>Precio de %1: %2</translation>
    </message>
    <message>
        <source>No price for %1</source>
        <translation>%1 sin precio</translation>
    </message>
    <message>
        <source>%1 is made of %2</source>
        <translation>%1 es de %2</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::GarmentForm</name>
    <message>
        <source>Garment</source>
        <translation>Prenda</translation>
    </message>
    <message>
        <source>Name of the garment</source>
        <translation>Nombre de la prenda</translation>
    </message>
    <message>
        <source>Id of the garment, by which orders refer to it</source>
        <translation>Id de la prenda, con el que los pedidos se refieren a ella</translation>
    </message>
    <message>
        <source>Kind of garment</source>
        <translation>Tipo de prenda</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Id</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Tipo</translation>
    </message>
    <message>
        <source>Fabric</source>
        <translation>Tela</translation>
    </message>
    <message>
        <source>Name of the fabric</source>
        <translation>Nombre de la tela</translation>
    </message>
    <message>
        <source>Weight of the fabric, as in 280 g/m² or 8.3 oz/yd²</source>
        <translation>Gramaje de la tela, como 280 g/m² o 8.3 oz/yd²</translation>
    </message>
    <message>
        <source>Fibres with their shares, as in 80 % cotton, 20 % polyester</source>
        <translation>Fibras con sus proporciones, como 80 % algodón, 20 % poliéster</translation>
    </message>
    <message>
        <source>Construction of the fabric</source>
        <translation>Construcción de la tela</translation>
    </message>
    <message>
        <source>Stretch of the fabric</source>
        <translation>Elasticidad de la tela</translation>
    </message>
    <message>
        <source>Pile of the fabric</source>
        <translation>Pelo de la tela</translation>
    </message>
    <message>
        <source>S&amp;heer</source>
        <translation>Tran&amp;sparente</translation>
    </message>
    <message>
        <source>A backing shows through it</source>
        <translation>Se transparenta el estabilizador</translation>
    </message>
    <message>
        <source>&amp;Called</source>
        <translation>Denom&amp;inación</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>&amp;Gramaje</translation>
    </message>
    <message>
        <source>Fibr&amp;es</source>
        <translation>&amp;Fibras</translation>
    </message>
    <message>
        <source>C&amp;onstruction</source>
        <translation>&amp;Construcción</translation>
    </message>
    <message>
        <source>S&amp;tretch</source>
        <translation>&amp;Elasticidad</translation>
    </message>
    <message>
        <source>Pi&amp;le</source>
        <translation>Pel&amp;o</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>color</translation>
    </message>
    <message>
        <source>What one garment costs the shop, as in 12.40 EUR; empty: not counted</source>
        <translation>Lo que una prenda cuesta al taller, como 12,40 EUR; vacío: no se cuenta</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>no se cuenta</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Usual for this kind; the plan counts it as assumed.</source>
        <translation>Lo habitual en este tipo; el plan lo da por supuesto.</translation>
    </message>
    <message>
        <source>It is this one</source>
        <translation>Es este</translation>
    </message>
    <message>
        <source>What the garment is sold in. Colours by name, as #rrggbb, or picked.</source>
        <translation>En qué se vende la prenda. Colores por su nombre en inglés, como #rrggbb, o elegidos.</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::GarmentsWindow</name>
    <message>
        <source>&amp;Garments</source>
        <translation>Pren&amp;das</translation>
    </message>
    <message>
        <source>&amp;New garment</source>
        <translation>Prenda &amp;nueva</translation>
    </message>
    <message>
        <source>From a &amp;file…</source>
        <translation>De un &amp;archivo…</translation>
    </message>
    <message>
        <source>Duplicate the garment</source>
        <translation>Duplicar la prenda</translation>
    </message>
    <message>
        <source>Remove the garment from the order</source>
        <translation>Quitar la prenda del pedido</translation>
    </message>
    <message>
        <source>The order has no garments yet. Add a new one, or one from a file.</source>
        <translation>El pedido aún no tiene prendas. Añada una nueva o una de un archivo.</translation>
    </message>
    <message>
        <source>This kind does not go with the size chart</source>
        <translation>Este tipo no es compatible con la tabla de tallas</translation>
    </message>
    <message>
        <source>The garment cannot be added</source>
        <translation>No se puede añadir la prenda</translation>
    </message>
    <message>
        <source>The garment stays in the order</source>
        <translation>La prenda sigue en el pedido</translation>
    </message>
    <message>
        <source>Save the garment to a file of its own</source>
        <translation>Guardar la prenda en un archivo propio</translation>
    </message>
    <message>
        <source>%1 has a file of its own</source>
        <translation>%1 tiene un archivo propio</translation>
    </message>
    <message>
        <source>%1. Save the order as well, so that it refers to the file.</source>
        <translation>%1. Guarde también el pedido, para que haga referencia al archivo.</translation>
    </message>
    <message>
        <source>The garment was not saved</source>
        <translation>La prenda no se ha guardado</translation>
    </message>
    <message>
        <source>There is no table on the clipboard</source>
        <translation>No hay ninguna tabla en el portapapeles</translation>
    </message>
    <message>
        <source>Copy the size chart in a spreadsheet or on a page, with its titles, and paste again.</source>
        <translation>Copie la tabla de tallas de una hoja de cálculo o de una página, con sus títulos, y vuelva a pegarla.</translation>
    </message>
    <message>
        <source>the clipboard</source>
        <translation>el portapapeles</translation>
    </message>
    <message>
        <source>Import a size chart</source>
        <translation>Importar una tabla de tallas</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Tablas (*.csv *.tsv *.txt);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>The file cannot be read</source>
        <translation>No se puede leer el archivo</translation>
    </message>
    <message>
        <source>The table cannot be read</source>
        <translation>No se puede leer la tabla</translation>
    </message>
    <message>
        <source>it has more columns than any size chart</source>
        <translation>tiene más columnas que cualquier tabla de tallas</translation>
    </message>
    <message>
        <source>There is no size chart in %1</source>
        <translation>No hay ninguna tabla de tallas en %1</translation>
    </message>
    <message>
        <source>the garment is gone</source>
        <translation>la prenda ya no está</translation>
    </message>
    <message>
        <source>Lines of the order lose what this chart lacks: %1.</source>
        <translation>Hay líneas del pedido que pierden lo que falta en esta tabla: %1.</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::HouseRuleForm</name>
    <message>
        <source>On the centre crease</source>
        <translation>En el pliegue central</translation>
    </message>
    <message>
        <source>From the centre crease to the design&apos;s centre</source>
        <translation>Del pliegue central al centro del diseño</translation>
    </message>
    <message>
        <source>Midway between placket and armhole</source>
        <translation>A medio camino entre la tapeta y la sisa</translation>
    </message>
    <message>
        <source>Over the middle of the pocket</source>
        <translation>En el centro del bolsillo</translation>
    </message>
    <message>
        <source>In from the side, to the design&apos;s outer side</source>
        <translation>Desde el costado hacia dentro, hasta el lado exterior del diseño</translation>
    </message>
    <message>
        <source>&amp;Id</source>
        <translation>&amp;Id</translation>
    </message>
    <message>
        <source>Id of the rule, distinct in the shop</source>
        <translation>Id de la norma, único en el taller</translation>
    </message>
    <message>
        <source>Where this rule is from</source>
        <translation>De dónde viene esta norma</translation>
    </message>
    <message>
        <source>&amp;Basis</source>
        <translation>&amp;Fundamento</translation>
    </message>
    <message>
        <source>Who decided it, and why</source>
        <translation>Quién lo decidió y por qué</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ota</translation>
    </message>
    <message>
        <source>One sentence for the reasons</source>
        <translation>Una frase para las razones</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Ubicación</translation>
    </message>
    <message>
        <source>Place on the garment</source>
        <translation>Ubicación en la prenda</translation>
    </message>
    <message>
        <source>&amp;Garments</source>
        <translation>&amp;Prendas</translation>
    </message>
    <message>
        <source>Kinds of garment</source>
        <translation>Tipos de prenda</translation>
    </message>
    <message>
        <source>All kinds</source>
        <translation>Todos los tipos</translation>
    </message>
    <message>
        <source>Si&amp;ze bands</source>
        <translation>Grupos de &amp;tallas</translation>
    </message>
    <message>
        <source>Bands of sizes</source>
        <translation>Grupos de tallas</translation>
    </message>
    <message>
        <source>All sizes</source>
        <translation>Todas las tallas</translation>
    </message>
    <message>
        <source>Onl&amp;y sizes</source>
        <translation>&amp;Solo tallas</translation>
    </message>
    <message>
        <source>Names of sizes with commas between; empty: all</source>
        <translation>Nombres de tallas separados por comas; vacío: todas</translation>
    </message>
    <message>
        <source>How far from which mark</source>
        <translation>A qué distancia de qué marca</translation>
    </message>
    <message>
        <source>&amp;Measured</source>
        <translation>&amp;Medido desde</translation>
    </message>
    <message>
        <source>Mark on the garment from which one measures</source>
        <translation>Marca de la prenda desde la que se mide</translation>
    </message>
    <message>
        <source>To the design&apos;s</source>
        <translation>Hasta esta parte del diseño</translation>
    </message>
    <message>
        <source>Which part of the design lies at that distance</source>
        <translation>Qué parte del diseño queda a esa distancia</translation>
    </message>
    <message>
        <source>nearest side</source>
        <translation>lado más cercano</translation>
    </message>
    <message>
        <source>centre</source>
        <translation>centro</translation>
    </message>
    <message>
        <source>&amp;Distance</source>
        <translation>&amp;Distancia</translation>
    </message>
    <message>
        <source>Distance from the mark to the design</source>
        <translation>Distancia de la marca al diseño</translation>
    </message>
    <message>
        <source>&amp;At least</source>
        <translation>&amp;Al menos</translation>
    </message>
    <message>
        <source>Never nearer to the mark than this</source>
        <translation>Nunca más cerca de la marca que esto</translation>
    </message>
    <message>
        <source>At mo&amp;st</source>
        <translation>&amp;Como máximo</translation>
    </message>
    <message>
        <source>Never further from the mark than this</source>
        <translation>Nunca más lejos de la marca que esto</translation>
    </message>
    <message>
        <source>Side&amp;ways</source>
        <translation>&amp;Lateralmente</translation>
    </message>
    <message>
        <source>Where the design goes sideways</source>
        <translation>Dónde va el diseño lateralmente</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Distancia lateral</translation>
    </message>
    <message>
        <source>Distance sideways, where one is asked for</source>
        <translation>Distancia lateral, donde se pida</translation>
    </message>
    <message>
        <source>Tu&amp;rned</source>
        <translation>&amp;Girado</translation>
    </message>
    <message>
        <source>Turned clockwise against upright as worn, in degrees</source>
        <translation>Girado en sentido horario respecto a la vertical con la prenda puesta, en grados</translation>
    </message>
    <message>
        <source>the shop&apos;s own habit</source>
        <translation>costumbre del propio taller</translation>
    </message>
    <message>
        <source>How large the design usually is; empty: anything</source>
        <translation>Qué tamaño suele tener el diseño; vacío: cualquiera</translation>
    </message>
    <message>
        <source>&amp;Least width</source>
        <translation>An&amp;cho mínimo</translation>
    </message>
    <message>
        <source>A narrower design is remarked on</source>
        <translation>Sobre un diseño más estrecho se da una nota</translation>
    </message>
    <message>
        <source>Most wid&amp;th</source>
        <translation>Anc&amp;ho máximo</translation>
    </message>
    <message>
        <source>A wider design is watched</source>
        <translation>Sobre un diseño más ancho se da una advertencia</translation>
    </message>
    <message>
        <source>Least &amp;height</source>
        <translation>A&amp;lto mínimo</translation>
    </message>
    <message>
        <source>A lower design is remarked on</source>
        <translation>Sobre un diseño más bajo se da una nota</translation>
    </message>
    <message>
        <source>Most h&amp;eight</source>
        <translation>Al&amp;to máximo</translation>
    </message>
    <message>
        <source>A higher design is watched</source>
        <translation>Sobre un diseño más alto se da una advertencia</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::LibraryWindow</name>
    <message>
        <source>&amp;Add</source>
        <translation>&amp;Añadir</translation>
    </message>
    <message>
        <source>New, or from a file</source>
        <translation>De cero o de un archivo</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation>D&amp;uplicar</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>Save to a &amp;file of its own…</source>
        <translation>Guardar en un archivo p&amp;ropio…</translation>
    </message>
    <message>
        <source>So that other orders can use it as well</source>
        <translation>Para que también puedan usarlo otros pedidos</translation>
    </message>
    <message>
        <source>JSON files (*%1)</source>
        <translation>Archivos JSON (*%1)</translation>
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
    <message>
        <source>Supplie&amp;d by the customer</source>
        <translation>&amp;Traídas por el cliente</translation>
    </message>
    <message>
        <source>The garments cost the shop nothing</source>
        <translation>Las prendas no le cuestan nada al taller</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::MachineForm</name>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>Name of the machine</source>
        <translation>Nombre de la máquina</translation>
    </message>
    <message>
        <source>&amp;Id</source>
        <translation>&amp;Id</translation>
    </message>
    <message>
        <source>Id of the machine, distinct in the shop</source>
        <translation>Id de la máquina, único en el taller</translation>
    </message>
    <message>
        <source>N&amp;eedles</source>
        <translation>A&amp;gujas</translation>
    </message>
    <message>
        <source>Number of needles</source>
        <translation>Número de agujas</translation>
    </message>
    <message>
        <source>Write a whole number, such as 10</source>
        <translation>Escriba un número entero, por ejemplo 10</translation>
    </message>
    <message>
        <source>S&amp;titches a minute</source>
        <translation>&amp;Puntadas por minuto</translation>
    </message>
    <message>
        <source>Stitches a minute as this shop runs it</source>
        <translation>Puntadas por minuto a las que trabaja este taller</translation>
    </message>
    <message>
        <source>Write a whole number, such as 650</source>
        <translation>Escriba un número entero, por ejemplo 650</translation>
    </message>
    <message>
        <source>Sewing field, for frames that name none</source>
        <translation>Campo de bordado, para los bastidores que no indican ninguno</translation>
    </message>
    <message>
        <source>sewing field</source>
        <translation>campo de bordado</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::MeasuredHoopingForm</name>
    <message>
        <source>Side&amp;ways</source>
        <translation>&amp;Lateral</translation>
    </message>
    <message>
        <source>How far the mark was off sideways; right of where it should be is plus</source>
        <translation>Cuánto se desvió la marca lateralmente; a la derecha de donde debería estar es positivo</translation>
    </message>
    <message>
        <source>A&amp;long</source>
        <translation>A lo l&amp;argo</translation>
    </message>
    <message>
        <source>How far the mark was off along the garment; down is plus</source>
        <translation>Cuánto se desvió la marca a lo largo de la prenda; hacia abajo es positivo</translation>
    </message>
    <message>
        <source>&amp;Turn</source>
        <translation>&amp;Giro</translation>
    </message>
    <message>
        <source>How far the garment lay turned, in degrees clockwise</source>
        <translation>Cuánto quedó girada la prenda, en grados en sentido horario</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ota</translation>
    </message>
    <message>
        <source>When and on what, such as 2026-10-02, polo</source>
        <translation>Cuándo y en qué, por ejemplo 2026-10-02, polo</translation>
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
    <name>creaseline::desk::MissingPanel</name>
    <message>
        <source>What is missing before it can be planned:</source>
        <translation>Lo que falta para poder planificarlo:</translation>
    </message>
    <message>
        <source>A shop: its frames decide what can be sewn where.</source>
        <translation>Un taller: sus bastidores deciden qué se puede bordar y dónde.</translation>
    </message>
    <message>
        <source>Open a shop&apos;s file…</source>
        <translation>Abrir el archivo de un taller…</translation>
    </message>
    <message>
        <source>Describe a new shop…</source>
        <translation>Describir un taller nuevo…</translation>
    </message>
    <message>
        <source>A garment with its size chart; then it lies here on the table.</source>
        <translation>Una prenda con su tabla de tallas; entonces aparece aquí sobre la mesa.</translation>
    </message>
    <message>
        <source>Garments of the order…</source>
        <translation>Prendas del pedido…</translation>
    </message>
    <message>
        <source>A line of the order that asks for this garment.</source>
        <translation>Una línea del pedido que pida esta prenda.</translation>
    </message>
    <message>
        <source>Add a garment to the order…</source>
        <translation>Añadir una prenda al pedido…</translation>
    </message>
    <message>
        <source>A design: its size and stitches.</source>
        <translation>Un diseño: su tamaño y sus puntadas.</translation>
    </message>
    <message>
        <source>Designs of the order…</source>
        <translation>Diseños del pedido…</translation>
    </message>
    <message>
        <source>A place on the garment where a design is sewn.</source>
        <translation>Una ubicación en la prenda donde se borde un diseño.</translation>
    </message>
    <message>
        <source>Add a place to the line…</source>
        <translation>Añadir una ubicación a la línea…</translation>
    </message>
    <message>
        <source>How many garments of which size: this line asks for none.</source>
        <translation>Cuántas prendas de qué talla: esta línea no pide ninguna.</translation>
    </message>
    <message>
        <source>Type the &amp;quantities…</source>
        <translation>Escribir el nú&amp;mero de cada talla…</translation>
    </message>
    <message>
        <source>Measures that go together: the garment cannot be drawn from its size chart.</source>
        <translation>Medidas que concuerden: la prenda no se puede dibujar con su tabla de tallas.</translation>
    </message>
    <message>
        <source>Mend the size chart…</source>
        <translation>Corregir la tabla de tallas…</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::NeedleChart</name>
    <message>
        <source>Threads on the needles</source>
        <translation>Hilos en las agujas</translation>
    </message>
    <message>
        <source>needle %1: %2</source>
        <translation>aguja %1: %2</translation>
    </message>
    <message>
        <source>, put on by hand</source>
        <translation>, se pone a mano</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::NeedleForm</name>
    <message>
        <source>&amp;Size</source>
        <translation>&amp;Grosor</translation>
    </message>
    <message>
        <source>Size in hundredths of a millimetre of blade, such as 75</source>
        <translation>Grosor en centésimas de milímetro del cuerpo de la aguja, por ejemplo 75</translation>
    </message>
    <message>
        <source>Write a whole number, such as 75</source>
        <translation>Escriba un número entero, por ejemplo 75</translation>
    </message>
    <message>
        <source>&amp;Point</source>
        <translation>&amp;Punta</translation>
    </message>
    <message>
        <source>Point of the needle</source>
        <translation>Punta de la aguja</translation>
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
    <message>
        <source>%1 down</source>
        <comment>length</comment>
        <translation>%1 hacia abajo</translation>
    </message>
    <message>
        <source>%1 up</source>
        <comment>length</comment>
        <translation>%1 hacia arriba</translation>
    </message>
    <message>
        <source>%1 towards the %2</source>
        <comment>length, side of the garment</comment>
        <translation>%1 hacia %2</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between parts of a list</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>Move %1 %2 of the rule</source>
        <comment>place, how far</comment>
        <translation>Mover %2 respecto a la norma: %1</translation>
    </message>
    <message>
        <source>%1 from the customer</source>
        <translation>%1: del cliente</translation>
    </message>
    <message>
        <source>%1 from the shop</source>
        <translation>%1: del taller</translation>
    </message>
    <message>
        <source>%1 (line %2)</source>
        <comment>place, line&apos;s id</comment>
        <translation>%1 (línea %2)</translation>
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
    <name>creaseline::desk::OrderGuide</name>
    <message>
        <source>The way to an order</source>
        <translation>El camino hasta un pedido</translation>
    </message>
    <message>
        <source>Close the guide</source>
        <translation>Cerrar la guía</translation>
    </message>
    <message>
        <source>Close the guide; Help brings it back</source>
        <translation>Cerrar la guía; el menú Ayuda la vuelve a mostrar</translation>
    </message>
    <message>
        <source>Your shop: frames and machine</source>
        <translation>Su taller: bastidores y máquina</translation>
    </message>
    <message>
        <source>Which frames are on hand decides what can be sewn where</source>
        <translation>Los bastidores disponibles deciden qué se puede bordar y dónde</translation>
    </message>
    <message>
        <source>The garment and its size chart</source>
        <translation>La prenda y su tabla de tallas</translation>
    </message>
    <message>
        <source>Two measures of each size are enough to begin; charts can be pasted</source>
        <translation>Bastan dos medidas de cada talla para empezar; las tablas se pueden pegar</translation>
    </message>
    <message>
        <source>The design: size and stitches</source>
        <translation>El diseño: tamaño y puntadas</translation>
    </message>
    <message>
        <source>Its outline can come from a picture, else it counts as a rectangle</source>
        <translation>Su contorno puede venir de una imagen; si no, cuenta como rectángulo</translation>
    </message>
    <message>
        <source>A line for the garment</source>
        <translation>Una línea para la prenda</translation>
    </message>
    <message>
        <source>One line for each garment and colour</source>
        <translation>Una línea por cada prenda y color</translation>
    </message>
    <message>
        <source>The place on it</source>
        <translation>El lugar en ella</translation>
    </message>
    <message>
        <source>Where the design is sewn; a line may have several</source>
        <translation>Dónde se borda el diseño; una línea puede tener varios</translation>
    </message>
    <message>
        <source>How many of each size</source>
        <translation>Cuántas de cada talla</translation>
    </message>
    <message>
        <source>Type them into the table</source>
        <translation>Se escriben en la tabla</translation>
    </message>
    <message>
        <source>The sheets for the hooping station</source>
        <translation>Las hojas para la mesa de bastidores</translation>
    </message>
    <message>
        <source>Placement sheets, templates, run cards and lists</source>
        <translation>Hojas de colocación, plantillas, fichas de tanda y listas</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>not done yet</source>
        <translation>sin hacer</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::OrderListModel</name>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Garments</source>
        <translation>Prendas</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
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
    <name>creaseline::desk::OrdersWindow</name>
    <message>
        <source>Find an order</source>
        <translation>Buscar un pedido</translation>
    </message>
    <message>
        <source>&amp;Folder…</source>
        <translation>&amp;Carpeta…</translation>
    </message>
    <message>
        <source>Choose the folder in which orders are looked for</source>
        <translation>Elija la carpeta en la que se buscan los pedidos</translation>
    </message>
    <message>
        <source>Look in</source>
        <translation>Buscar en</translation>
    </message>
    <message>
        <source>Words of the number, title, customer or garment</source>
        <translation>Palabras del número, el título, el cliente o la prenda</translation>
    </message>
    <message>
        <source>Orders found</source>
        <translation>Pedidos encontrados</translation>
    </message>
    <message>
        <source>Use as a &amp;pattern</source>
        <translation>Usar como &amp;modelo</translation>
    </message>
    <message>
        <source>Start an order with its garments and places, without quantities</source>
        <translation>Empezar un pedido con sus prendas y ubicaciones, sin cantidades</translation>
    </message>
    <message>
        <source>Start a &amp;copy</source>
        <translation>&amp;Empezar una copia</translation>
    </message>
    <message>
        <source>Start an order that is like it, under a new number</source>
        <translation>Empezar un pedido igual, con un número nuevo</translation>
    </message>
    <message>
        <source>Open in a &amp;new window</source>
        <translation>Abrir en una &amp;ventana nueva</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>&amp;Abrir</translation>
    </message>
    <message>
        <source>Orders in %1</source>
        <translation>Pedidos en %1</translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation>Buscando…</translation>
    </message>
    <message numerus="yes">
        <source>%n order(s)</source>
        <translation>
            <numerusform>%n pedido</numerusform>
            <numerusform>%n pedidos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>; %n file(s) cannot be read</source>
        <translation>
            <numerusform>; no se puede leer %n archivo</numerusform>
            <numerusform>; no se pueden leer %n archivos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>creaseline::desk::OutlineView</name>
    <message>
        <source>%1 × %2</source>
        <comment>width, height</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>Outline, %1</source>
        <translation>Contorno, %1</translation>
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
    <message>
        <source>Moved side&amp;ways</source>
        <translation>Más a la de&amp;recha</translation>
    </message>
    <message>
        <source>Moved sideways from the rule, to the viewer&apos;s right; a minus sign moves left</source>
        <translation>Más a la derecha que la norma, según se mira; con signo menos, más a la izquierda</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::PlacementDrag</name>
    <message>
        <source>no frame on hand can hold it here</source>
        <translation>ningún bastidor disponible puede abarcarlo aquí</translation>
    </message>
    <message>
        <source>%1: room %2</source>
        <comment>frame, length</comment>
        <translation>%1: holgura %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>height, sideways</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, turned %2 clockwise</source>
        <translation>%1, girado %2 en sentido horario</translation>
    </message>
    <message>
        <source>%1, turned %2 anticlockwise</source>
        <translation>%1, girado %2 en sentido antihorario</translation>
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
    <message>
        <source>Part %1 of %2: %3</source>
        <translation>Parte %1 de %2: %3</translation>
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
    <message>
        <source>Where the shop has rates; no other sheet shows prices</source>
        <translation>Si el taller tiene tarifas; ninguna otra hoja muestra precios</translation>
    </message>
    <message>
        <source>C&amp;ost on the order summary</source>
        <translation>Coste en el res&amp;umen del pedido</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::ShopEdits</name>
    <message>
        <source>New machine</source>
        <translation>Máquina nueva</translation>
    </message>
    <message>
        <source>New frame</source>
        <translation>Bastidor nuevo</translation>
    </message>
    <message>
        <source>New backing</source>
        <translation>Estabilizador nuevo</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nueva</translation>
    </message>
    <message>
        <source>the shop&apos;s own habit</source>
        <translation>costumbre del propio taller</translation>
    </message>
    <message>
        <source>Machine %1</source>
        <translation>Máquina %1</translation>
    </message>
    <message>
        <source>Frame %1</source>
        <translation>Bastidor %1</translation>
    </message>
    <message>
        <source>Backing %1</source>
        <translation>Estabilizador %1</translation>
    </message>
    <message>
        <source>Needle %1</source>
        <translation>Aguja %1</translation>
    </message>
    <message>
        <source>Measured hooping %1</source>
        <comment>its number in the list</comment>
        <translation>Puesta en bastidor medida %1</translation>
    </message>
    <message>
        <source>House rule %1</source>
        <translation>Norma propia %1</translation>
    </message>
    <message>
        <source>Add: %1</source>
        <comment>entry of the shop</comment>
        <translation>Añadir: %1</translation>
    </message>
    <message>
        <source>Duplicate: %1</source>
        <comment>entry of the shop</comment>
        <translation>Duplicar: %1</translation>
    </message>
    <message>
        <source>%1, copy</source>
        <comment>name</comment>
        <translation>%1, copia</translation>
    </message>
    <message>
        <source>Remove: %1</source>
        <comment>entry of the shop</comment>
        <translation>Quitar: %1</translation>
    </message>
    <message>
        <source>My shop</source>
        <translation>Mi taller</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::ShopForm</name>
    <message>
        <source>%1: %2 %3</source>
        <comment>entry of the shop, field, value</comment>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::ShopHeadForm</name>
    <message>
        <source>Shop</source>
        <translation>Taller</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>Name of the shop</source>
        <translation>Nombre del taller</translation>
    </message>
    <message>
        <source>What the steps before the machine may add; empty: the usual value</source>
        <translation>Cuánto pueden añadir los pasos previos a la máquina; vacío: el valor habitual</translation>
    </message>
    <message>
        <source>&amp;Crease</source>
        <translation>&amp;Pliegue</translation>
    </message>
    <message>
        <source>How far a pressed crease may lie off the garment&apos;s true middle</source>
        <translation>Cuánto puede desviarse un pliegue planchado del centro real de la prenda</translation>
    </message>
    <message>
        <source>&amp;Ruler</source>
        <translation>M&amp;edida con regla</translation>
    </message>
    <message>
        <source>How far off a length laid on cloth may be</source>
        <translation>Cuánto puede desviarse una medida tomada sobre la tela</translation>
    </message>
    <message>
        <source>Cloth gi&amp;ves</source>
        <translation>La tela &amp;cede</translation>
    </message>
    <message>
        <source>How far cloth moves between marking and clamping</source>
        <translation>Cuánto se mueve la tela entre marcarla y sujetarla</translation>
    </message>
    <message>
        <source>Units of this shop, until you choose others</source>
        <translation>Unidades de este taller, mientras no se elijan otras</translation>
    </message>
    <message>
        <source>&amp;Lengths</source>
        <translation>&amp;Longitudes</translation>
    </message>
    <message>
        <source>Unit of lengths</source>
        <translation>Unidad de longitud</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Pulgadas</translation>
    </message>
    <message>
        <source>Centimetres</source>
        <translation>Centímetros</translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation>Milímetros</translation>
    </message>
    <message>
        <source>Ruler &amp;mark</source>
        <translation>División de la &amp;regla</translation>
    </message>
    <message>
        <source>Finest mark of the shop&apos;s ruler, in inches</source>
        <translation>División más fina de la regla del taller, en pulgadas</translation>
    </message>
    <message>
        <source>1/8</source>
        <translation>1/8</translation>
    </message>
    <message>
        <source>1/16</source>
        <translation>1/16</translation>
    </message>
    <message>
        <source>&amp;Weights</source>
        <translation>&amp;Gramajes</translation>
    </message>
    <message>
        <source>Unit of the weight of fabrics</source>
        <translation>Unidad del gramaje de las telas</translation>
    </message>
    <message>
        <source>g/m²</source>
        <translation>g/m²</translation>
    </message>
    <message>
        <source>oz/yd²</source>
        <translation>oz/yd²</translation>
    </message>
    <message>
        <source>How far off a hooped garment may be</source>
        <translation>Cuánto puede desviarse una prenda puesta en el bastidor</translation>
    </message>
    <message>
        <source>We &amp;judge it ourselves</source>
        <translation>Lo &amp;juzga el propio taller</translation>
    </message>
    <message>
        <source>Else it follows from measured hoopings if they are enough, and from the usual values if not</source>
        <translation>Si no, se deduce de las puestas en bastidor medidas si son suficientes, y de los valores habituales si no lo son</translation>
    </message>
    <message>
        <source>the shop&apos;s own judgement</source>
        <translation>criterio del propio taller</translation>
    </message>
    <message>
        <source>Side&amp;ways</source>
        <translation>La&amp;teral</translation>
    </message>
    <message>
        <source>How far off sideways a hooped garment may be</source>
        <translation>Cuánto puede desviarse lateralmente una prenda puesta en el bastidor</translation>
    </message>
    <message>
        <source>A&amp;long</source>
        <translation>A lo l&amp;argo</translation>
    </message>
    <message>
        <source>How far off along itself a hooped garment may be</source>
        <translation>Cuánto puede desviarse a lo largo una prenda puesta en el bastidor</translation>
    </message>
    <message>
        <source>T&amp;urn</source>
        <translation>G&amp;iro</translation>
    </message>
    <message>
        <source>How far turned a hooped garment may lie</source>
        <translation>Cuánto puede quedar girada una prenda puesta en el bastidor</translation>
    </message>
    <message>
        <source>&amp;Basis</source>
        <translation>&amp;Fundamento</translation>
    </message>
    <message>
        <source>How the shop came to judge so</source>
        <translation>En qué se basa el criterio del taller</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>normalmente %1</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::ShopRatesForm</name>
    <message>
        <source>What an order costs the shop. What is left empty is not counted, and the cost says so.</source>
        <translation>Lo que un pedido cuesta al taller. Lo que se deja vacío no se cuenta, y el coste lo dice.</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>&amp;Work, an hour</source>
        <translation>&amp;Trabajo, por hora</translation>
    </message>
    <message>
        <source>What an hour of work costs, as in 18.50</source>
        <translation>Lo que cuesta una hora de trabajo, como 18,50</translation>
    </message>
    <message>
        <source>&amp;Machine, an hour</source>
        <translation>Má&amp;quina, por hora</translation>
    </message>
    <message>
        <source>What an hour of the machine costs: buying it, care, power</source>
        <translation>Lo que cuesta una hora de la máquina: compra, cuidado, corriente</translation>
    </message>
    <message>
        <source>Stands &amp;by</source>
        <translation>&amp;Presencia</translation>
    </message>
    <message>
        <source>Share of the machine&apos;s own time in which somebody stands by and is paid, as in 50 %; empty: all of it</source>
        <translation>Parte del tiempo propio de la máquina en que alguien está presente y cobra, como 50 %; vacío: todo</translation>
    </message>
    <message>
        <source>Material; prices of backing are on its page, of garments in their window</source>
        <translation>Material; los precios del estabilizador están en su página, los de las prendas en su ventana</translation>
    </message>
    <message>
        <source>T&amp;opping film</source>
        <translation>Película &amp;soluble</translation>
    </message>
    <message>
        <source>Price of a roll of topping film, its width and length, as in 22 / 20 in x 25 yd</source>
        <translation>Precio de un rollo de película soluble, su ancho y su largo, como 22 / 50 cm x 25 m</translation>
    </message>
    <message>
        <source>&amp;Appliqué fabric</source>
        <translation>Tela de &amp;aplicación</translation>
    </message>
    <message>
        <source>Price of a length of appliqué fabric, its width and length, as in 9.90 / 140 cm x 1 m</source>
        <translation>Precio de un corte de tela de aplicación, su ancho y su largo, como 9,90 / 140 cm x 1 m</translation>
    </message>
    <message>
        <source>Once, and on top</source>
        <translation>Una vez, y encima</translation>
    </message>
    <message>
        <source>S&amp;et-up, a design</source>
        <translation>Pr&amp;eparación, por diseño</translation>
    </message>
    <message>
        <source>What each design of an order costs once, for digitizing or setting up</source>
        <translation>Lo que cada diseño de un pedido cuesta una vez, por digitalizarlo o prepararlo</translation>
    </message>
    <message>
        <source>Mar&amp;kup</source>
        <translation>Re&amp;cargo</translation>
    </message>
    <message>
        <source>On top of all that is counted, as in 30 %</source>
        <translation>Sobre todo lo que se cuenta, como 30 %</translation>
    </message>
    <message>
        <source>C&amp;urrency</source>
        <translation>&amp;Moneda</translation>
    </message>
    <message>
        <source>Code of the currency in three letters, as in EUR or USD; empty: costs are not reckoned</source>
        <translation>Código de la moneda en tres letras, como EUR o USD; vacío: los costes no se calculan</translation>
    </message>
    <message>
        <source>Write a code of ISO 4217, such as EUR or USD</source>
        <translation>Escriba un código de ISO 4217, como EUR o USD</translation>
    </message>
    <message>
        <source>100 %</source>
        <translation>100 %</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>T&amp;hread</source>
        <translation>&amp;Hilo</translation>
    </message>
    <message>
        <source>Price of the thread for so many stitches, as in 0.02 / 1000, or of a cone and the stitches that it lasts for</source>
        <translation>Precio del hilo para tantas puntadas, como 0,02 / 1000, o de un cono y las puntadas para las que alcanza</translation>
    </message>
    <message>
        <source>Rates</source>
        <translation>Tarifas</translation>
    </message>
    <message>
        <source>Choose a currency first</source>
        <translation>Elija antes una moneda</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>no se cuenta</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::ShopWindow</name>
    <message>
        <source>Parts of the shop</source>
        <translation>Partes del taller</translation>
    </message>
    <message>
        <source>Shop</source>
        <translation>Taller</translation>
    </message>
    <message>
        <source>Frames</source>
        <translation>Bastidores</translation>
    </message>
    <message>
        <source>Frames of the shop</source>
        <translation>Bastidores del taller</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Máquinas</translation>
    </message>
    <message>
        <source>Machines of the shop</source>
        <translation>Máquinas del taller</translation>
    </message>
    <message>
        <source>Backing</source>
        <translation>Estabilizador</translation>
    </message>
    <message>
        <source>Backing in stock</source>
        <translation>Estabilizador en existencias</translation>
    </message>
    <message>
        <source>No backing is listed, so orders say what to buy.</source>
        <translation>No hay estabilizadores en la lista, así que los pedidos indican qué comprar.</translation>
    </message>
    <message>
        <source>Needles</source>
        <translation>Agujas</translation>
    </message>
    <message>
        <source>Needles in stock</source>
        <translation>Agujas en existencias</translation>
    </message>
    <message>
        <source>No needle is listed, so nothing is said about needles in stock.</source>
        <translation>No hay agujas en la lista, así que no se dice nada de las agujas en existencias.</translation>
    </message>
    <message>
        <source>Measured hoopings</source>
        <translation>Puestas en bastidor medidas</translation>
    </message>
    <message>
        <source>Hoopings that were measured</source>
        <translation>Puestas en bastidor que se midieron</translation>
    </message>
    <message>
        <source>Measure at the machine how far off each garment was hooped before you bring it true, and write it down here. With enough of them the room that a frame must leave follows from your own hands.</source>
        <translation>Mida en la máquina cuánto se desvía cada prenda puesta en el bastidor antes de corregirla y anótelo aquí. Con suficientes medidas, la holgura que debe dejar un bastidor se deduce del trabajo del propio taller.</translation>
    </message>
    <message>
        <source>House rules</source>
        <translation>Normas propias</translation>
    </message>
    <message>
        <source>Placement rules of the shop</source>
        <translation>Normas de ubicación del taller</translation>
    </message>
    <message>
        <source>A house rule says where this shop puts a design, in place of the shipped rule.</source>
        <translation>Una norma propia dice dónde pone este taller un diseño, en lugar de la norma incluida en el programa.</translation>
    </message>
    <message>
        <source>Save the shop as…</source>
        <translation>Guardar el taller como…</translation>
    </message>
    <message>
        <source>Save the shop</source>
        <translation>Guardar el taller</translation>
    </message>
    <message>
        <source>%1[*] - Shop</source>
        <translation>%1[*] - Taller</translation>
    </message>
    <message>
        <source>Shop[*]</source>
        <translation>Taller[*]</translation>
    </message>
    <message>
        <source>Not in a file yet</source>
        <translation>Aún sin archivo</translation>
    </message>
    <message>
        <source>The order cannot be planned with this: %1</source>
        <translation>El pedido no se puede planificar con esto: %1</translation>
    </message>
    <message>
        <source>No order is open.</source>
        <translation>No hay ningún pedido abierto.</translation>
    </message>
    <message>
        <source>Planning the order…</source>
        <translation>Planificando el pedido…</translation>
    </message>
    <message>
        <source>The order with this shop: %1, %2</source>
        <translation>El pedido con este taller: %1, %2</translation>
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
    <message>
        <source>Rates</source>
        <translation>Tarifas</translation>
    </message>
    <message>
        <source>Somebody else changed the shop, too</source>
        <translation>Alguien más cambió también el taller</translation>
    </message>
    <message>
        <source>What its file says counts now, not what you changed here.</source>
        <translation>Ahora vale lo que dice su archivo, no lo que usted cambió aquí.</translation>
    </message>
    <message>
        <source>&amp;Bring mine back</source>
        <translation>&amp;Recuperar lo mío</translation>
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
    <message>
        <source>not planned yet</source>
        <translation>aún sin planificar</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::SizeRail</name>
    <message>
        <source>Sizes of the selected place</source>
        <translation>Tallas de la ubicación elegida</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>sin planificar</translation>
    </message>
    <message>
        <source>Ctrl+click a second size to lay it over the one on the table, or press Ctrl+Left or Ctrl+Right here; again takes it away</source>
        <translation>Ctrl+clic en otra talla para ponerla sobre la de la mesa, o Ctrl+Izquierda o Ctrl+Derecha aquí; repetirlo la quita</translation>
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
    <message>
        <source>Ne&amp;w shop</source>
        <translation>Nuevo &amp;taller</translation>
    </message>
    <message>
        <source>Describe a shop: its frames, machines and stock</source>
        <translation>Describir un taller: sus bastidores, máquinas y existencias</translation>
    </message>
    <message>
        <source>Recent order %1, %2</source>
        <comment>number, title and customer; file</comment>
        <translation>Pedido reciente %1, %2</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::StockForm</name>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>Name of the backing</source>
        <translation>Nombre del estabilizador</translation>
    </message>
    <message>
        <source>&amp;Id</source>
        <translation>&amp;Id</translation>
    </message>
    <message>
        <source>Id of the backing, distinct in the shop</source>
        <translation>Id del estabilizador, único en el taller</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Tipo</translation>
    </message>
    <message>
        <source>Kind of backing</source>
        <translation>Tipo de estabilizador</translation>
    </message>
    <message>
        <source>&amp;Weight</source>
        <translation>&amp;Gramaje</translation>
    </message>
    <message>
        <source>Areal weight, as in 60 g/m2 or 1.8 oz/yd2</source>
        <translation>Gramaje, como 60 g/m2 o 1.8 oz/yd2</translation>
    </message>
    <message>
        <source>&amp;Form</source>
        <translation>&amp;Presentación</translation>
    </message>
    <message>
        <source>On a roll or in sheets</source>
        <translation>En rollo o en hojas</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rollo</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>Wi&amp;dth</source>
        <translation>&amp;Ancho</translation>
    </message>
    <message>
        <source>Width of the roll or of one sheet</source>
        <translation>Ancho del rollo o de una hoja</translation>
    </message>
    <message>
        <source>&amp;Length</source>
        <translation>&amp;Largo</translation>
    </message>
    <message>
        <source>Length left on the roll, as in 25 m or 20 yd, or of one sheet</source>
        <translation>Largo que queda en el rollo, como 25 m o 20 yd, o de una hoja</translation>
    </message>
    <message>
        <source>&amp;Sheets</source>
        <translation>&amp;Hojas</translation>
    </message>
    <message>
        <source>Number of sheets in stock</source>
        <translation>Número de hojas en existencias</translation>
    </message>
    <message>
        <source>Write a whole number, such as 40</source>
        <translation>Escriba un número entero, por ejemplo 40</translation>
    </message>
    <message>
        <source>&amp;Price</source>
        <translation>P&amp;recio</translation>
    </message>
    <message>
        <source>Price and what one gets for it: of a roll its length, as in 38 / 50 m, of sheets their number, as in 14 / 100; empty: not counted</source>
        <translation>Precio y lo que se recibe por él: de un rollo su largo, como 38 / 50 m, de hojas su número, como 14 / 100; vacío: no se cuenta</translation>
    </message>
    <message>
        <source>Choose a currency among the rates first</source>
        <translation>Elija antes una moneda entre las tarifas</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>no se cuenta</translation>
    </message>
    <message>
        <source>first a currency, among the rates</source>
        <translation>antes una moneda, entre las tarifas</translation>
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
    <message>
        <source>; size %1 drawn over it</source>
        <translation>; talla %1 dibujada encima</translation>
    </message>
    <message>
        <source>Size %1, over it size %2</source>
        <translation>Talla %1, encima la talla %2</translation>
    </message>
    <message>
        <source>Drag to lay the design elsewhere; Control leaves out the ruler marks</source>
        <translation>Arrastrar para poner el diseño en otro lugar; con Control no se ajusta a las divisiones de la regla</translation>
    </message>
    <message>
        <source>Drag to turn the design</source>
        <translation>Arrastrar para girar el diseño</translation>
    </message>
    <message>
        <source>Click to type the length</source>
        <translation>Hacer clic para escribir la longitud</translation>
    </message>
    <message>
        <source>Length from the mark to the design</source>
        <translation>Longitud de la marca al diseño</translation>
    </message>
    <message>
        <source>Length from the mark to the design&apos;s centre</source>
        <translation>Longitud de la marca al centro del diseño</translation>
    </message>
    <message>
        <source>Length sideways to the design&apos;s centre</source>
        <translation>Longitud lateral hasta el centro del diseño</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>state, description</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>size %1: %2 %3</source>
        <comment>size, length, from which mark</comment>
        <translation>talla %1: %2 %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>size, length</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::TablePanel</name>
    <message>
        <source>%1 % of true size</source>
        <translation>%1 % del tamaño real</translation>
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
    <message>
        <source>The garment lies here as soon as the order has one with a size chart.</source>
        <translation>La prenda aparece aquí en cuanto el pedido tenga una con tabla de tallas.</translation>
    </message>
    <message>
        <source>The garment cannot be drawn: its measures do not go together.</source>
        <translation>La prenda no se puede dibujar: sus medidas no concuerdan.</translation>
    </message>
    <message>
        <source>Of the garment&apos;s true size</source>
        <translation>Del tamaño real de la prenda</translation>
    </message>
    <message>
        <source>Not planned yet</source>
        <translation>Aún sin planificar</translation>
    </message>
    <message>
        <source>Nothing is sewn here</source>
        <translation>Aquí no se borda nada</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>number</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Other panels</source>
        <translation>Otros paneles</translation>
    </message>
    <message>
        <source>Look at a panel of the garment that nothing is sewn on</source>
        <translation>Ver un panel de la prenda en el que no se borda nada</translation>
    </message>
    <message>
        <source>Other panels of the garment</source>
        <translation>Otros paneles de la prenda</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::ToppingForm</name>
    <message>
        <source>Shop</source>
        <translation>Taller</translation>
    </message>
    <message>
        <source>&amp;Topping film is in stock</source>
        <translation>Hay película &amp;soluble en existencias</translation>
    </message>
    <message>
        <source>Film that dissolves, to lie over pile and knit</source>
        <translation>Película que se disuelve, para poner sobre pelo y punto</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::WindowedForm</name>
    <message>
        <source>Shape</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>Shape of the %1</source>
        <comment>window, body, sewing field</comment>
        <translation>Forma (%1)</translation>
    </message>
    <message>
        <source>Rectangle</source>
        <translation>Rectángulo</translation>
    </message>
    <message>
        <source>Ellipse</source>
        <translation>Elipse</translation>
    </message>
    <message>
        <source>In between</source>
        <translation>Intermedia</translation>
    </message>
    <message>
        <source>Polygon, as in the file</source>
        <translation>Polígono, como en el archivo</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Width of the %1</source>
        <translation>Ancho (%1)</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Height of the %1</source>
        <translation>Alto (%1)</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Esquinas</translation>
    </message>
    <message>
        <source>Radius of the corners of the %1, or its fullness from 2 to 20 where it is in between</source>
        <translation>Radio de las esquinas (%1), o su plenitud de 2 a 20 si la forma es intermedia</translation>
    </message>
    <message>
        <source>this shape has no corners to choose</source>
        <translation>esta forma no tiene esquinas que elegir</translation>
    </message>
    <message>
        <source>write a number from 2 to 20</source>
        <translation>escriba un número de 2 a 20</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::WordsWindow</name>
    <message>
        <source>Words of the trade</source>
        <translation>Términos del oficio</translation>
    </message>
    <message>
        <source>Search the words</source>
        <translation>Buscar en los términos</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Términos</translation>
    </message>
    <message>
        <source>No such word here.</source>
        <translation>Ese término no está aquí.</translation>
    </message>
    <message>
        <source>also: %1</source>
        <translation>también: %1</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::WorkText</name>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n pieza</numerusform>
            <numerusform>%n piezas</numerusform>
        </translation>
    </message>
    <message>
        <source>Loading: %1. Start: %2.</source>
        <translation>Carga: %1. Inicio: %2.</translation>
    </message>
    <message>
        <source>Before the first garment</source>
        <translation>Antes de la primera prenda</translation>
    </message>
    <message>
        <source>Each garment</source>
        <translation>Cada prenda</translation>
    </message>
    <message>
        <source>needle %1, %2</source>
        <translation>aguja %1, %2</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>once</source>
        <translation>una vez</translation>
    </message>
    <message>
        <source>each</source>
        <translation>cada una</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>En total</translation>
    </message>
    <message numerus="yes">
        <source>%n garment(s)</source>
        <translation>
            <numerusform>%n prenda</numerusform>
            <numerusform>%n prendas</numerusform>
        </translation>
    </message>
    <message>
        <source>Garments</source>
        <translation>Prendas</translation>
    </message>
    <message numerus="yes">
        <source>%n hooping(s)</source>
        <translation>
            <numerusform>%n puesta en bastidor</numerusform>
            <numerusform>%n puestas en bastidor</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on hand</source>
        <translation>disponibles: %1</translation>
    </message>
    <message>
        <source>Frames</source>
        <translation>Bastidores</translation>
    </message>
    <message>
        <source>Backing to cut</source>
        <translation>Estabilizador para cortar</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>suficiente</translation>
    </message>
    <message>
        <source>not enough</source>
        <translation>insuficiente</translation>
    </message>
    <message>
        <source>Backing in all</source>
        <translation>Estabilizador en total</translation>
    </message>
    <message>
        <source>Topping to cut</source>
        <translation>Película soluble para cortar</translation>
    </message>
    <message>
        <source>Appliqué fabric to cut</source>
        <translation>Tela de aplicación para cortar</translation>
    </message>
    <message>
        <source>%1 stitches</source>
        <translation>%1 puntadas</translation>
    </message>
    <message>
        <source>Threads</source>
        <translation>Hilos</translation>
    </message>
    <message>
        <source>not in stock</source>
        <translation>no está en existencias</translation>
    </message>
    <message>
        <source>Needles</source>
        <translation>Agujas</translation>
    </message>
    <message>
        <source>Held: not to be sewn as ordered</source>
        <translation>Retenido: no bordar como se pidió</translation>
    </message>
    <message>
        <source>Nothing is needed.</source>
        <translation>No hace falta nada.</translation>
    </message>
    <message>
        <source>By kind</source>
        <translation>Por clase</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Cada una</translation>
    </message>
    <message>
        <source>By line</source>
        <translation>Por línea</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Tanda</translation>
    </message>
    <message>
        <source>By run: work, machine and material</source>
        <translation>Por tanda: trabajo, máquina y material</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>would change with: %1</source>
        <translation>cambiaría con: %1</translation>
    </message>
</context>
<context>
    <name>creaseline::desk::WorkWindow</name>
    <message>
        <source>Runs and materials</source>
        <translation>Tandas y materiales</translation>
    </message>
    <message>
        <source>Runs, materials</source>
        <translation>Tandas, materiales</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Tandas</translation>
    </message>
    <message>
        <source>Materials to lay ready</source>
        <translation>Materiales que preparar</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Materiales</translation>
    </message>
    <message>
        <source>Runs in order</source>
        <translation>Tandas en orden</translation>
    </message>
    <message>
        <source>What the chosen run takes</source>
        <translation>Qué requiere la tanda elegida</translation>
    </message>
    <message>
        <source>Nothing is planned yet.</source>
        <translation>Aún no hay nada planificado.</translation>
    </message>
    <message>
        <source>%1 for %2 in %3</source>
        <comment>time, hoopings, runs</comment>
        <translation>%1 para %2 en %3</translation>
    </message>
    <message numerus="yes">
        <source>%n hooping(s)</source>
        <translation>
            <numerusform>%n puesta en bastidor</numerusform>
            <numerusform>%n puestas en bastidor</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n tanda</numerusform>
            <numerusform>%n tandas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hooping(s) held by stops</source>
        <translation>
            <numerusform>%n puesta en bastidor retenida por impedimentos</numerusform>
            <numerusform>%n puestas en bastidor retenidas por impedimentos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1  %2, %3
%4, %n garment(s), %5</source>
        <comment>number, place, design, frame, time</comment>
        <translation>
            <numerusform>%1  %2, %3
%4, %n prenda, %5</numerusform>
            <numerusform>%1  %2, %3
%4, %n prendas, %5</numerusform>
        </translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coste</translation>
    </message>
    <message>
        <source>What is not counted</source>
        <translation>Lo que no se cuenta</translation>
    </message>
    <message>
        <source>&amp;Go to where it is given</source>
        <translation>&amp;Ir a donde se indica</translation>
    </message>
    <message>
        <source>Cost by kind, line and run</source>
        <translation>Coste por clase, línea y tanda</translation>
    </message>
    <message>
        <source>The shop has no rates, so the cost is not reckoned.</source>
        <translation>El taller no tiene tarifas, así que el coste no se calcula.</translation>
    </message>
    <message>
        <source>Give the currency, then what work and material cost</source>
        <translation>Indique la moneda, y luego lo que cuestan el trabajo y el material</translation>
    </message>
    <message>
        <source>Total %1</source>
        <translation>Total %1</translation>
    </message>
    <message>
        <source>Incomplete total %1</source>
        <translation>Total incompleto %1</translation>
    </message>
    <message>
        <source>%1 a garment. For the owner; not on what lies at the machine.</source>
        <translation>%1 por prenda. Para el dueño; no en lo que está junto a la máquina.</translation>
    </message>
    <message>
        <source>Not counted: %1. To count it, %2.</source>
        <translation>No se cuenta: %1. Para contarlo, %2.</translation>
    </message>
    <message>
        <source>Cutting</source>
        <translation>Corte</translation>
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
