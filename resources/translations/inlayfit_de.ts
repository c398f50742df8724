<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
 <context>
  <name>map</name>
  <message>
   <source>spot {0} of {1}</source>
   <translation>Stelle {0} von {1}</translation>
  </message>
  <message>
   <source>loosest</source>
   <translation>weiteste</translation>
  </message>
  <message>
   <source>tightest, spot 1</source>
   <translation>engste, Stelle 1</translation>
  </message>
  <message>
   <source>even all round</source>
   <translation>rundum gleich</translation>
  </message>
  <message>
   <source>tightest</source>
   <translation>am engsten</translation>
  </message>
  <message>
   <source>check</source>
   <translation>Prüfung</translation>
  </message>
  <message>
   <source>Use as pocket</source>
   <translation>Als Tasche nehmen</translation>
  </message>
  <message>
   <source>Use as plug</source>
   <translation>Als Einlage nehmen</translation>
  </message>
  <message>
   <source>unknown</source>
   <translation>unbekannt</translation>
  </message>
  <message>
   <source>{0} per side ({1} overall)</source>
   <translation>{0} je Seite ({1} gesamt)</translation>
  </message>
 </context>
 <context>
  <name>GapMapView</name>
  <message>
   <source>Gap map</source>
   <translation>Spaltkarte</translation>
  </message>
  <message>
   <source>Spot {0} of {1}, tightest first: {2}.</source>
   <translation>Stelle {0} von {1}, die engste zuerst: {2}.</translation>
  </message>
  <message>
   <source>Even all round: {0}.</source>
   <translation>Rundum gleich: {0}.</translation>
  </message>
  <message>
   <source>Tightest: {0}.</source>
   <translation>Am engsten: {0}.</translation>
  </message>
  <message>
   <source>Tightest: {0}. Click to see it in the loupe.</source>
   <translation>Am engsten: {0}. Klicken zeigt es in der Lupe.</translation>
  </message>
  <message>
   <source>Spot {0} of {1}: {2}. Click to see it in the loupe.</source>
   <translation>Stelle {0} von {1}: {2}. Klicken zeigt sie in der Lupe.</translation>
  </message>
  <message>
   <source>{0}. Click to choose it, with Ctrl to add it.</source>
   <translation>{0}. Klicken wählt, mit Strg kommt es hinzu.</translation>
  </message>
  <message>
   <source>True scale.</source>
   <translation>Maßstäblich.</translation>
  </message>
  <message>
   <source>Band width is not to scale.</source>
   <translation>Bandbreite nicht maßstäblich.</translation>
  </message>
  <message>
   <source>Gap map, preview</source>
   <translation>Spaltkarte, Vorschau</translation>
  </message>
 </context>
 <context>
  <name>Loupe</name>
  <message>
   <source>Loupe</source>
   <translation>Lupe</translation>
  </message>
  <message>
   <source>cutter {0} leaves r {1}</source>
   <translation>Fräser {0} lässt r {1}</translation>
  </message>
  <message>
   <source>plug</source>
   <translation>Einlage</translation>
  </message>
  <message>
   <source>host</source>
   <translation>Träger</translation>
  </message>
  <message>
   <source>dotted: pare by hand</source>
   <translation>gepunktet: von Hand abtragen</translation>
  </message>
  <message>
   <source>{0}, true scale</source>
   <translation>{0}, maßstäblich</translation>
  </message>
  <message>
   <source>1 square = {0}</source>
   <translation>1 Kästchen = {0}</translation>
  </message>
  <message>
   <source>per side, {0}</source>
   <translation>je Seite, {0}</translation>
  </message>
  <message>
   <source>{0} overall)</source>
   <translation>{0} gesamt)</translation>
  </message>
 </context>
 <context>
  <name>actions</name>
  <message>
   <source>&amp;Undo</source>
   <translation>&amp;Rückgängig</translation>
  </message>
  <message>
   <source>&amp;Redo</source>
   <translation>&amp;Wiederholen</translation>
  </message>
  <message>
   <source>&amp;Open outline…</source>
   <translation>Umriss ö&amp;ffnen…</translation>
  </message>
  <message>
   <source>Reads a DXF or SVG drawing, or a project.</source>
   <translation>Liest eine DXF- oder SVG-Zeichnung oder ein Projekt.</translation>
  </message>
  <message>
   <source>&amp;Add outlines…</source>
   <translation>Umrisse &amp;hinzufügen…</translation>
  </message>
  <message>
   <source>Reads further outlines into this work.</source>
   <translation>Liest weitere Umrisse in diese Arbeit.</translation>
  </message>
  <message>
   <source>Try the sa&amp;mple</source>
   <translation>&amp;Beispiel ansehen</translation>
  </message>
  <message>
   <source>Opens a leaf that is let into a disc, ready to change.</source>
   <translation>Öffnet ein Blatt in einer Scheibe, bereit zum Ändern.</translation>
  </message>
  <message>
   <source>&amp;Type a pocket by size…</source>
   <translation>&amp;Tasche nach Maß eingeben…</translation>
  </message>
  <message>
   <source>A circle, rectangle or slot that has no drawing.</source>
   <translation>Kreis, Rechteck oder Langloch ohne Zeichnung.</translation>
  </message>
  <message>
   <source>&amp;Read the drawing anew…</source>
   <translation>Zeichnung neu &amp;lesen…</translation>
  </message>
  <message>
   <source>Another unit, gaps, painted lines, layers.</source>
   <translation>Andere Einheit, Lücken, gemalte Linien, Ebenen.</translation>
  </message>
  <message>
   <source>&amp;Save project</source>
   <translation>Projekt &amp;speichern</translation>
  </message>
  <message>
   <source>Keeps outlines, fits and trials in one file.</source>
   <translation>Behält Umrisse, Passungen und Versuche in einer Datei.</translation>
  </message>
  <message>
   <source>Save project &amp;as…</source>
   <translation>Projekt speichern &amp;unter…</translation>
  </message>
  <message>
   <source>Keeps this work under another name.</source>
   <translation>Behält diese Arbeit unter anderem Namen.</translation>
  </message>
  <message>
   <source>Save outlines to &amp;cut…</source>
   <translation>Umrisse zum S&amp;chneiden speichern…</translation>
  </message>
  <message>
   <source>Writes both halves as DXF and SVG.</source>
   <translation>Schreibt beide Hälften als DXF und SVG.</translation>
  </message>
  <message>
   <source>Se&amp;ttings…</source>
   <translation>&amp;Einstellungen…</translation>
  </message>
  <message>
   <source>Units, new fits, colours.</source>
   <translation>Einheiten, neue Passungen, Farben.</translation>
  </message>
  <message>
   <source>&amp;Quit</source>
   <translation>B&amp;eenden</translation>
  </message>
  <message>
   <source>Closes the window.</source>
   <translation>Schließt das Fenster.</translation>
  </message>
  <message>
   <source>Takes the last change back.</source>
   <translation>Nimmt die letzte Änderung zurück.</translation>
  </message>
  <message>
   <source>Does again what was taken back.</source>
   <translation>Tut wieder, was zurückgenommen wurde.</translation>
  </message>
  <message>
   <source>&amp;Paste outlines</source>
   <translation>Umrisse &amp;einfügen</translation>
  </message>
  <message>
   <source>Reads SVG or DXF text from the clipboard.</source>
   <translation>Liest SVG- oder DXF-Text aus der Zwischenablage.</translation>
  </message>
  <message>
   <source>Choose &amp;all outlines</source>
   <translation>&amp;Alle Umrisse wählen</translation>
  </message>
  <message>
   <source>Fits every outline.</source>
   <translation>Passt jeden Umriss ein.</translation>
  </message>
  <message>
   <source>Choose &amp;nothing</source>
   <translation>&amp;Nichts wählen</translation>
  </message>
  <message>
   <source>Fits nothing.</source>
   <translation>Passt nichts ein.</translation>
  </message>
  <message>
   <source>Re&amp;move chosen outlines</source>
   <translation>Gewählte Umrisse ent&amp;fernen</translation>
  </message>
  <message>
   <source>The drawing file keeps them.</source>
   <translation>Die Zeichnungsdatei behält sie.</translation>
  </message>
  <message>
   <source>&amp;Fit to view</source>
   <translation>&amp;Alles zeigen</translation>
  </message>
  <message>
   <source>Shows everything.</source>
   <translation>Zeigt alles.</translation>
  </message>
  <message>
   <source>Zoom &amp;in</source>
   <translation>Ver&amp;größern</translation>
  </message>
  <message>
   <source>Shows more detail.</source>
   <translation>Zeigt mehr Einzelheiten.</translation>
  </message>
  <message>
   <source>Zoom &amp;out</source>
   <translation>Ver&amp;kleinern</translation>
  </message>
  <message>
   <source>Shows more at once.</source>
   <translation>Zeigt mehr auf einmal.</translation>
  </message>
  <message>
   <source>&amp;Next tight spot</source>
   <translation>&amp;Nächste enge Stelle</translation>
  </message>
  <message>
   <source>Walks the tightest places, the worst first.</source>
   <translation>Geht die engsten Stellen durch, die schlimmste zuerst.</translation>
  </message>
  <message>
   <source>&amp;Previous tight spot</source>
   <translation>&amp;Vorige enge Stelle</translation>
  </message>
  <message>
   <source>Walks back.</source>
   <translation>Geht zurück.</translation>
  </message>
  <message>
   <source>Show the &amp;spot</source>
   <translation>&amp;Stelle zeigen</translation>
  </message>
  <message>
   <source>Loupe and stack beside the map.</source>
   <translation>Lupe und Aufbau neben der Karte.</translation>
  </message>
  <message>
   <source>Show &amp;checks</source>
   <translation>&amp;Prüfungen zeigen</translation>
  </message>
  <message>
   <source>What to look at before cutting.</source>
   <translation>Was vor dem Schneiden anzusehen ist.</translation>
  </message>
  <message>
   <source>Show out&amp;lines</source>
   <translation>&amp;Umrisse zeigen</translation>
  </message>
  <message>
   <source>The outlines as a list.</source>
   <translation>Die Umrisse als Liste.</translation>
  </message>
  <message>
   <source>Show the &amp;workshop</source>
   <translation>&amp;Werkstatt zeigen</translation>
  </message>
  <message>
   <source>Errors, passes, many parts.</source>
   <translation>Fehler, Durchgänge, viele Teile.</translation>
  </message>
  <message>
   <source>Next pa&amp;nel</source>
   <translation>Nächster &amp;Bereich</translation>
  </message>
  <message>
   <source>Moves the keyboard to the next part of the window.</source>
   <translation>Gibt die Tastatur an den nächsten Teil des Fensters.</translation>
  </message>
  <message>
   <source>Pre&amp;vious panel</source>
   <translation>V&amp;origer Bereich</translation>
  </message>
  <message>
   <source>Moves the keyboard back.</source>
   <translation>Gibt die Tastatur zurück.</translation>
  </message>
  <message>
   <source>Type a &amp;clearance</source>
   <translation>&amp;Spiel eingeben</translation>
  </message>
  <message>
   <source>Moves the keyboard to the clearance.</source>
   <translation>Gibt die Tastatur an das Spiel.</translation>
  </message>
  <message>
   <source>&amp;Millimetres</source>
   <translation>&amp;Millimeter</translation>
  </message>
  <message>
   <source>Shows lengths in mm.</source>
   <translation>Zeigt Längen in mm.</translation>
  </message>
  <message>
   <source>&amp;Inches</source>
   <translation>&amp;Zoll</translation>
  </message>
  <message>
   <source>Shows lengths in inches.</source>
   <translation>Zeigt Längen in Zoll.</translation>
  </message>
  <message>
   <source>&amp;Thou</source>
   <translation>&amp;Tausendstel Zoll</translation>
  </message>
  <message>
   <source>Shows lengths in 0.001 in.</source>
   <translation>Zeigt Längen in 0,001 Zoll.</translation>
  </message>
  <message>
   <source>As the s&amp;ystem</source>
   <translation>Wie das S&amp;ystem</translation>
  </message>
  <message>
   <source>Follows the system's colours.</source>
   <translation>Folgt den Farben des Systems.</translation>
  </message>
  <message>
   <source>&amp;Light</source>
   <translation>&amp;Hell</translation>
  </message>
  <message>
   <source>For a bright bench.</source>
   <translation>Für eine helle Werkbank.</translation>
  </message>
  <message>
   <source>&amp;Dark</source>
   <translation>&amp;Dunkel</translation>
  </message>
  <message>
   <source>For a dim one.</source>
   <translation>Für eine dunkle.</translation>
  </message>
  <message>
   <source>&amp;High contrast</source>
   <translation>Hoher &amp;Kontrast</translation>
  </message>
  <message>
   <source>Strong outlines on black.</source>
   <translation>Kräftige Linien auf Schwarz.</translation>
  </message>
  <message>
   <source>The drawing is a &amp;pocket</source>
   <translation>Die Zeichnung ist eine &amp;Tasche</translation>
  </message>
  <message>
   <source>The plug is made to fit it.</source>
   <translation>Die Einlage wird passend dazu gemacht.</translation>
  </message>
  <message>
   <source>The drawing is a p&amp;lug</source>
   <translation>Die Zeichnung ist eine &amp;Einlage</translation>
  </message>
  <message>
   <source>It is made already; the pocket is cut to fit it.</source>
   <translation>Es gibt sie schon; die Tasche wird passend geschnitten.</translation>
  </message>
  <message>
   <source>Plug from a &amp;drawing…</source>
   <translation>Einlage aus &amp;Zeichnung…</translation>
  </message>
  <message>
   <source>For two made halves: reads the outline of the plug.</source>
   <translation>Für zwei gefertigte Hälften: liest den Umriss der Einlage.</translation>
  </message>
  <message>
   <source>Pocket as &amp;measured…</source>
   <translation>Tasche, wie &amp;gemessen…</translation>
  </message>
  <message>
   <source>Fits to a pocket that is cut already, by its widths.</source>
   <translation>Passt nach ihren Weiten in eine Tasche ein, die schon geschnitten ist.</translation>
  </message>
  <message>
   <source>One drawing unit is one &amp;mm</source>
   <translation>Eine Zeichnungseinheit ist ein &amp;mm</translation>
  </message>
  <message>
   <source>Reads the drawing again, in millimetres.</source>
   <translation>Liest die Zeichnung neu, in Millimetern.</translation>
  </message>
  <message>
   <source>One drawing unit is one &amp;inch</source>
   <translation>Eine Zeichnungseinheit ist ein &amp;Zoll</translation>
  </message>
  <message>
   <source>Reads the drawing again, in inches.</source>
   <translation>Liest die Zeichnung neu, in Zoll.</translation>
  </message>
  <message>
   <source>&amp;Guide</source>
   <translation>&amp;Anleitung</translation>
  </message>
  <message>
   <source>From a drawing to a plug that fits.</source>
   <translation>Von der Zeichnung zur passenden Einlage.</translation>
  </message>
  <message>
   <source>&amp;Keyboard</source>
   <translation>&amp;Tastatur</translation>
  </message>
  <message>
   <source>Every key that does something.</source>
   <translation>Jede Taste, die etwas tut.</translation>
  </message>
  <message>
   <source>&amp;About Inlayfit</source>
   <translation>&amp;Über Inlayfit</translation>
  </message>
  <message>
   <source>Version and licence.</source>
   <translation>Version und Lizenz.</translation>
  </message>
 </context>
 <context>
  <name>commands</name>
  <message>
   <source>Guide</source>
   <translation>Anleitung</translation>
  </message>
  <message>
   <source>Keyboard</source>
   <translation>Tastatur</translation>
  </message>
  <message>
   <source>About Inlayfit</source>
   <translation>Über Inlayfit</translation>
  </message>
  <message>
   <source>Taken back: {0}</source>
   <translation>Zurückgenommen: {0}</translation>
  </message>
  <message>
   <source>Done again: {0}</source>
   <translation>Wiederholt: {0}</translation>
  </message>
 </context>
 <context>
  <name>content</name>
  <message>
   <source>“{0}” lies on another computer; save it on this one first.</source>
   <translation>„{0}“ liegt auf einem anderen Rechner; zuerst auf diesem sichern.</translation>
  </message>
  <message>
   <source>This text is no drawing; drop the text of an SVG or DXF.</source>
   <translation>Dieser Text ist keine Zeichnung; den Text einer SVG oder DXF fallen lassen.</translation>
  </message>
  <message>
   <source>a project</source>
   <translation>ein Projekt</translation>
  </message>
  <message>
   <source>“{0}” is a project; drop it alone.</source>
   <translation>„{0}“ ist ein Projekt; es allein fallen lassen.</translation>
  </message>
  <message>
   <source>Open the project</source>
   <translation>Das Projekt öffnen</translation>
  </message>
  <message>
   <source>{0} drawings</source>
   <translation>{0} Zeichnungen</translation>
  </message>
  <message>
   <source>{0}: {1}</source>
   <translation>{0}: {1}</translation>
  </message>
  <message>
   <source>This cannot be used</source>
   <translation>Das ist nicht zu gebrauchen</translation>
  </message>
  <message>
   <source>“{0}” is a folder; drop the drawings in it.</source>
   <translation>„{0}“ ist ein Ordner; die Zeichnungen darin fallen lassen.</translation>
  </message>
  <message>
   <source>“{0}” cannot be read; look whether it is there and yours to read.</source>
   <translation>„{0}“ ist nicht lesbar; nachsehen, ob die Datei da ist und gelesen werden darf.</translation>
  </message>
  <message>
   <source>“{0}” is empty; save the drawing again.</source>
   <translation>„{0}“ ist leer; die Zeichnung noch einmal sichern.</translation>
  </message>
  <message>
   <source>a DXF drawing</source>
   <translation>eine DXF-Zeichnung</translation>
  </message>
  <message>
   <source>an SVG drawing</source>
   <translation>eine SVG-Zeichnung</translation>
  </message>
  <message>
   <source>a table of points</source>
   <translation>eine Punktetabelle</translation>
  </message>
 </context>
 <context>
  <name>core</name>
  <message>
   <source>{plug}, {plug_state} with {plug_cutter}, into {pocket}, {pocket_state} with {pocket_cutter}, {feel} at {clearance} per side ({overall} overall), corners {corners}, {allowance}, {seat} on {glue}, {facing}.</source>
   <translation>{plug}, {plug_state} mit {plug_cutter}, in {pocket}, {pocket_state} mit {pocket_cutter}, bei {clearance} je Seite ({overall} gesamt) {feel}, Ecken {corners}, {allowance}, auf {glue} {seat}, {facing}.</translation>
  </message>
  <message>
   <source>a plug</source>
   <translation>eine Einlage</translation>
  </message>
  <message>
   <source>a pocket</source>
   <translation>eine Tasche</translation>
  </message>
  <message>
   <source>plug</source>
   <translation>Einlage</translation>
  </message>
  <message>
   <source>pocket</source>
   <translation>Tasche</translation>
  </message>
  <message>
   <source>to cut</source>
   <translation>zu schneiden</translation>
  </message>
  <message>
   <source>already cut</source>
   <translation>schon geschnitten</translation>
  </message>
  <message>
   <source>finished</source>
   <translation>fertig</translation>
  </message>
  <message>
   <source>{0}, stays</source>
   <translation>{0}, bleibt</translation>
  </message>
  <message>
   <source>a {0} cutter</source>
   <translation>Fräser {0}</translation>
  </message>
  <message>
   <source>a {0} kerf</source>
   <translation>Schnittfuge {0}</translation>
  </message>
  <message>
   <source>no cutter radius</source>
   <translation>scharfem Werkzeug</translation>
  </message>
  <message>
   <source>won't start</source>
   <translation>fasst nicht</translation>
  </message>
  <message>
   <source>press</source>
   <translation>gepresst</translation>
  </message>
  <message>
   <source>tap-in</source>
   <translation>mit Klopfen</translation>
  </message>
  <message>
   <source>snug</source>
   <translation>satt</translation>
  </message>
  <message>
   <source>slip</source>
   <translation>gleitend</translation>
  </message>
  <message>
   <source>rattles</source>
   <translation>klappernd</translation>
  </message>
  <message>
   <source>rounded to match</source>
   <translation>passend gerundet</translation>
  </message>
  <message>
   <source>left for hand work</source>
   <translation>für Handarbeit gelassen</translation>
  </message>
  <message>
   <source>rounded</source>
   <translation>gerundet</translation>
  </message>
  <message>
   <source>dog-bone</source>
   <translation>als Knochen</translation>
  </message>
  <message>
   <source>T-bone</source>
   <translation>als T-Knochen</translation>
  </message>
  <message>
   <source>dog-bone in both</source>
   <translation>als Knochen in beiden</translation>
  </message>
  <message>
   <source>T-bone in both</source>
   <translation>als T-Knochen in beiden</translation>
  </message>
  <message>
   <source>dog-bone in the plug</source>
   <translation>als Knochen in der Einlage</translation>
  </message>
  <message>
   <source>T-bone in the plug</source>
   <translation>als T-Knochen in der Einlage</translation>
  </message>
  <message>
   <source>left for hand work in the plug</source>
   <translation>der Einlage für Handarbeit</translation>
  </message>
  <message>
   <source>dog-bone in the pocket</source>
   <translation>als Knochen in der Tasche</translation>
  </message>
  <message>
   <source>T-bone in the pocket</source>
   <translation>als T-Knochen in der Tasche</translation>
  </message>
  <message>
   <source>left for hand work in the pocket</source>
   <translation>der Tasche für Handarbeit</translation>
  </message>
  <message>
   <source>dog-bone in the pocket, T-bone in the plug</source>
   <translation>als Knochen in der Tasche, T-Knochen in der Einlage</translation>
  </message>
  <message>
   <source>dog-bone in the pocket, left for hand work in the plug</source>
   <translation>als Knochen in der Tasche, in der Einlage für Handarbeit</translation>
  </message>
  <message>
   <source>T-bone in the pocket, dog-bone in the plug</source>
   <translation>als T-Knochen in der Tasche, Knochen in der Einlage</translation>
  </message>
  <message>
   <source>T-bone in the pocket, left for hand work in the plug</source>
   <translation>als T-Knochen in der Tasche, in der Einlage für Handarbeit</translation>
  </message>
  <message>
   <source>left for hand work in the pocket, dog-bone in the plug</source>
   <translation>in der Tasche für Handarbeit, Knochen in der Einlage</translation>
  </message>
  <message>
   <source>left for hand work in the pocket, T-bone in the plug</source>
   <translation>in der Tasche für Handarbeit, T-Knochen in der Einlage</translation>
  </message>
  <message>
   <source>Both halves get corners that both cutters can reach.</source>
   <translation>Beide Hälften bekommen Ecken, die beide Fräser erreichen.</translation>
  </message>
  <message>
   <source>The plug's notches are cut deeper, along the corner's middle.</source>
   <translation>Die Kerben der Einlage werden tiefer geschnitten, entlang der Eckmitte.</translation>
  </message>
  <message>
   <source>The plug's notches are cut deeper, along one wall.</source>
   <translation>Die Kerben der Einlage werden tiefer geschnitten, entlang einer Wand.</translation>
  </message>
  <message>
   <source>The pocket's corners are cut deeper, along one wall.</source>
   <translation>Die Ecken der Tasche werden tiefer geschnitten, entlang einer Wand.</translation>
  </message>
  <message>
   <source>The pocket's corners are pared with a chisel.</source>
   <translation>Die Ecken der Tasche werden mit dem Stechbeitel nachgestochen.</translation>
  </message>
  <message>
   <source>The pocket's corners are cut deeper; the plug stays sharp.</source>
   <translation>Die Ecken der Tasche werden tiefer geschnitten; die Einlage bleibt scharf.</translation>
  </message>
  <message>
   <source>The plug's notches are filed.</source>
   <translation>Die Kerben der Einlage werden gefeilt.</translation>
  </message>
  <message>
   <source>no roughing pass</source>
   <translation>ohne Schruppgang</translation>
  </message>
  <message>
   <source>{0} left to finish</source>
   <translation>{0} Aufmaß</translation>
  </message>
  <message>
   <source>flush</source>
   <translation>bündig</translation>
  </message>
  <message>
   <source>{0} proud</source>
   <translation>{0} überstehend</translation>
  </message>
  <message>
   <source>{0} below</source>
   <translation>{0} vertieft</translation>
  </message>
  <message>
   <source>no glue</source>
   <translation>bloßem Grund</translation>
  </message>
  <message>
   <source>cut face up</source>
   <translation>Sichtseite oben</translation>
  </message>
  <message>
   <source>cut face down</source>
   <translation>Sichtseite unten</translation>
  </message>
  <message>
   <source>Open {0}</source>
   <translation>{0} öffnen</translation>
  </message>
  <message>
   <source>Add {0} outlines</source>
   <translation>{0} Umrisse hinzufügen</translation>
  </message>
  <message>
   <source>Remove {0} outlines</source>
   <translation>{0} Umrisse entfernen</translation>
  </message>
  <message>
   <source>Choose outlines</source>
   <translation>Umrisse wählen</translation>
  </message>
  <message>
   <source>Choose nothing</source>
   <translation>Nichts wählen</translation>
  </message>
  <message>
   <source>Choose {0}</source>
   <translation>{0} wählen</translation>
  </message>
  <message>
   <source>Choose {0} outlines</source>
   <translation>{0} Umrisse wählen</translation>
  </message>
  <message>
   <source>Name an outline {0}</source>
   <translation>Umriss {0} nennen</translation>
  </message>
  <message>
   <source>Set clearance to {0} per side</source>
   <translation>Spiel auf {0} je Seite setzen</translation>
  </message>
  <message>
   <source>Ask for a {0} fit</source>
   <translation>Sitz wünschen: {0}</translation>
  </message>
  <message>
   <source>Set pocket cutter to {0}</source>
   <translation>Fräser der Tasche auf {0} setzen</translation>
  </message>
  <message>
   <source>Set plug cutter to {0}</source>
   <translation>Fräser der Einlage auf {0} setzen</translation>
  </message>
  <message>
   <source>Set pocket kerf to {0}</source>
   <translation>Schnittfuge der Tasche auf {0} setzen</translation>
  </message>
  <message>
   <source>Set plug kerf to {0}</source>
   <translation>Schnittfuge der Einlage auf {0} setzen</translation>
  </message>
  <message>
   <source>Set finishing allowance to {0}</source>
   <translation>Schlichtaufmaß auf {0} setzen</translation>
  </message>
  <message>
   <source>Mark pocket as {0}</source>
   <translation>Tasche als {0} kennzeichnen</translation>
  </message>
  <message>
   <source>Mark plug as {0}</source>
   <translation>Einlage als {0} kennzeichnen</translation>
  </message>
  <message>
   <source>Set pocket corners to {0}</source>
   <translation>Ecken der Tasche: {0}</translation>
  </message>
  <message>
   <source>Set plug corners to {0}</source>
   <translation>Ecken der Einlage: {0}</translation>
  </message>
  <message>
   <source>Set corners to {0}</source>
   <translation>Ecken: {0}</translation>
  </message>
  <message>
   <source>Use as pocket</source>
   <translation>Als Tasche nehmen</translation>
  </message>
  <message>
   <source>Use as plug</source>
   <translation>Als Einlage nehmen</translation>
  </message>
  <message>
   <source>Call the pocket {0}</source>
   <translation>Tasche {0} nennen</translation>
  </message>
  <message>
   <source>Call the plug {0}</source>
   <translation>Einlage {0} nennen</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nichts</translation>
  </message>
  <message>
   <source>Change the stack</source>
   <translation>Aufbau ändern</translation>
  </message>
  <message>
   <source>Cut face up</source>
   <translation>Mit Sichtseite oben schneiden</translation>
  </message>
  <message>
   <source>Cut face down</source>
   <translation>Mit Sichtseite unten schneiden</translation>
  </message>
  <message>
   <source>Show lengths in {0}</source>
   <translation>Längen in {0} zeigen</translation>
  </message>
  <message>
   <source>Change how the drawing is read</source>
   <translation>Zeichnung anders lesen</translation>
  </message>
  <message>
   <source>Read the drawing in {0}</source>
   <translation>Zeichnung in {0} lesen</translation>
  </message>
  <message>
   <source>Record a {0} trial</source>
   <translation>Versuch festhalten: {0}</translation>
  </message>
  <message>
   <source>Add a {0} by its size</source>
   <translation>{0} nach Maß hinzufügen</translation>
  </message>
  <message>
   <source>Fit the pocket as measured</source>
   <translation>In die Tasche einpassen, wie sie gemessen ist</translation>
  </message>
  <message>
   <source>Take {0} for the plug</source>
   <translation>{0} als Einlage nehmen</translation>
  </message>
  <message>
   <source>Take the plug from {0}</source>
   <translation>Die Einlage aus {0} nehmen</translation>
  </message>
  <message>
   <source>Lay the plug {0}</source>
   <translation>Die Einlage {0} legen</translation>
  </message>
  <message>
   <source>to its seat, not turned</source>
   <translation>an ihren Sitz, ungedreht,</translation>
  </message>
  <message>
   <source>to its seat, turned if need be</source>
   <translation>an ihren Sitz, nötigenfalls gedreht,</translation>
  </message>
  <message>
   <source>as it is drawn</source>
   <translation>wie gezeichnet</translation>
  </message>
  <message>
   <source>Change the workshop's numbers</source>
   <translation>Die Zahlen der Werkstatt ändern</translation>
  </message>
  <message>
   <source>Set the kerf's taper to {0}</source>
   <translation>Schräge der Schnittfuge auf {0} setzen</translation>
  </message>
  <message>
   <source>Break the plug's lower edge by {0}</source>
   <translation>Unterkante der Einlage um {0} brechen</translation>
  </message>
  <message>
   <source>Break the pocket's rim by {0}</source>
   <translation>Rand der Tasche um {0} brechen</translation>
  </message>
  <message>
   <source>circle</source>
   <translation>Kreis</translation>
  </message>
  <message>
   <source>rectangle</source>
   <translation>Rechteck</translation>
  </message>
  <message>
   <source>slot</source>
   <translation>Langloch</translation>
  </message>
  <message>
   <source>pasted outlines</source>
   <translation>eingefügte Umrisse</translation>
  </message>
  <message>
   <source>Nothing is chosen.</source>
   <translation>Nichts ist gewählt.</translation>
  </message>
  <message>
   <source>Click an outline to fit it.</source>
   <translation>Klicken Sie einen Umriss an, um ihn einzupassen.</translation>
  </message>
  <message>
   <source>Open the outline of a pocket or a plug.</source>
   <translation>Öffnen Sie den Umriss einer Tasche oder Einlage.</translation>
  </message>
  <message>
   <source>Will not go in yet.</source>
   <translation>Geht noch nicht hinein.</translation>
  </message>
  <message>
   <source>Not ready to cut.</source>
   <translation>Noch nicht bereit zum Schneiden.</translation>
  </message>
  <message>
   <source>Look before cutting.</source>
   <translation>Vor dem Schneiden ansehen.</translation>
  </message>
  <message>
   <source>Has to be pressed in.</source>
   <translation>Muss eingepresst werden.</translation>
  </message>
  <message>
   <source>Goes in.</source>
   <translation>Geht hinein.</translation>
  </message>
  <message>
   <source>Working it out.</source>
   <translation>Wird ausgerechnet.</translation>
  </message>
  <message>
   <source>No word on the fit until every wall is measured.</source>
   <translation>Kein Wort zur Passung, bevor jede Wand gemessen ist.</translation>
  </message>
  <message>
   <source>Tightest {0}, over {1} fittings.</source>
   <translation>Engste Stelle {0}, über {1} Passungen.</translation>
  </message>
  <message>
   <source>Tightest {0}, loosest {1}.</source>
   <translation>Engste Stelle {0}, weiteste {1}.</translation>
  </message>
  <message>
   <source>{0} per side ({1} overall)</source>
   <translation>{0} je Seite ({1} gesamt)</translation>
  </message>
  <message>
   <source>It binds by {0}.</source>
   <translation>Sie klemmt um {0}.</translation>
  </message>
  <message>
   <source>Will not go in as it is.</source>
   <translation>Geht so nicht hinein.</translation>
  </message>
  <message>
   <source>Goes in, tighter than wanted.</source>
   <translation>Geht hinein, enger als gewollt.</translation>
  </message>
  <message>
   <source>Goes in, looser than wanted.</source>
   <translation>Geht hinein, loser als gewollt.</translation>
  </message>
  <message>
   <source>bites</source>
   <translation>klemmt</translation>
  </message>
  <message>
   <source>tight</source>
   <translation>eng</translation>
  </message>
  <message>
   <source>on</source>
   <translation>richtig</translation>
  </message>
  <message>
   <source>slack</source>
   <translation>locker</translation>
  </message>
  <message>
   <source>loose</source>
   <translation>lose</translation>
  </message>
  <message>
   <source>under {0}</source>
   <translation>unter {0}</translation>
  </message>
  <message>
   <source>to {0}</source>
   <translation>bis {0}</translation>
  </message>
  <message>
   <source>over {0}</source>
   <translation>über {0}</translation>
  </message>
  <message>
   <source>per side ({0} overall)</source>
   <translation>je Seite ({0} gesamt)</translation>
  </message>
  <message>
   <source>copper</source>
   <translation>Kupfer</translation>
  </message>
  <message>
   <source>leaf</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <source>cherry</source>
   <translation>Kirsche</translation>
  </message>
  <message>
   <source>disc</source>
   <translation>Scheibe</translation>
  </message>
  <message>
   <source>thin glue</source>
   <translation>dünnem Kleber</translation>
  </message>
  <message>
   <source>Relieve the plug</source>
   <translation>Einlage freistellen</translation>
  </message>
  <message>
   <source>Relieve the pocket</source>
   <translation>Tasche freistellen</translation>
  </message>
  <message>
   <source>Use a snug clearance</source>
   <translation>Sattes Spiel nehmen</translation>
  </message>
  <message>
   <source>Its corners are sharp</source>
   <translation>Ihre Ecken sind scharf</translation>
  </message>
  <message>
   <source>Choose the plug</source>
   <translation>Einlage wählen</translation>
  </message>
  <message>
   <source>Leave it as drawn</source>
   <translation>Wie gezeichnet lassen</translation>
  </message>
  <message>
   <source>Break the plug's lower edge</source>
   <translation>Unterkante der Einlage brechen</translation>
  </message>
  <message>
   <source>Change the fit sentence.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>1,000</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>DesktopRow</name>
  <message>
   <source>&amp;Double click</source>
   <translation>&amp;Doppelklick</translation>
  </message>
  <message>
   <source>This system is told by hand: choose “Open with” on a .inlayfit file and pick {0}.</source>
   <translation>Diesem System sagt man es von Hand: bei einer .inlayfit-Datei „Öffnen mit“ wählen und {0} angeben.</translation>
  </message>
  <message>
   <source>A double click on a .inlayfit file opens this program.</source>
   <translation>Ein Doppelklick auf eine .inlayfit-Datei öffnet dieses Programm.</translation>
  </message>
  <message>
   <source>A double click on a .inlayfit file opens another copy of this program.</source>
   <translation>Ein Doppelklick auf eine .inlayfit-Datei öffnet eine andere Kopie dieses Programms.</translation>
  </message>
  <message>
   <source>Your desktop does not know .inlayfit files yet; this tells it.</source>
   <translation>Der Schreibtisch kennt .inlayfit-Dateien noch nicht; hiermit erfährt er es.</translation>
  </message>
  <message>
   <source>No longer open .inlayfit files with this program</source>
   <translation>.inlayfit-Dateien nicht mehr mit diesem Programm öffnen</translation>
  </message>
  <message>
   <source>Open .inlayfit files with this program</source>
   <translation>.inlayfit-Dateien mit diesem Programm öffnen</translation>
  </message>
  <message>
   <source>&lt;b&gt;Double click&lt;/b&gt;&lt;br&gt;Three small files in {0} say it; DXF and SVG stay as they are.</source>
   <translation>&lt;b&gt;Doppelklick&lt;/b&gt;&lt;br&gt;Drei kleine Dateien in {0} sagen es; DXF und SVG bleiben, wie sie sind.</translation>
  </message>
  <message>
   <source>Taken away; nothing of it is left in {0}.</source>
   <translation>Entfernt; in {0} ist nichts davon übrig.</translation>
  </message>
  <message>
   <source>Written, but your desktop is not told: install {0}, then press again.</source>
   <translation>Geschrieben, aber der Schreibtisch weiß noch nichts davon: {0} installieren und noch einmal drücken.</translation>
  </message>
  <message>
   <source>Written, but {0} failed; press again, or sign in anew.</source>
   <translation>Geschrieben, aber {0} schlug fehl; noch einmal drücken oder neu anmelden.</translation>
  </message>
 </context>
 <context>
  <name>Documents</name>
  <message>
   <source>The clipboard holds no outline; copy an SVG or DXF, or a file of that kind.</source>
   <translation>Die Zwischenablage enthält keinen Umriss; kopieren Sie SVG oder DXF oder eine solche Datei.</translation>
  </message>
  <message>
   <source>The drawing is not there any more; open it again to read it in another unit.</source>
   <translation>Die Zeichnung ist nicht mehr da; öffnen Sie sie neu, um sie in einer anderen Einheit zu lesen.</translation>
  </message>
  <message>
   <source>Sample</source>
   <translation>Beispiel</translation>
  </message>
  <message>
   <source>this work</source>
   <translation>diese Arbeit</translation>
  </message>
  <message>
   <source>Pasted outlines</source>
   <translation>Eingefügte Umrisse</translation>
  </message>
  <message>
   <source>the clipboard</source>
   <translation>der Zwischenablage</translation>
  </message>
  <message>
   <source>1 outline</source>
   <translation>1 Umriss</translation>
  </message>
  <message>
   <source>{0} outlines</source>
   <translation>{0} Umrisse</translation>
  </message>
  <message>
   <source>Read {0} from {1}</source>
   <translation>{0} aus {1} gelesen</translation>
  </message>
  <message>
   <source>The unit could not be remembered; you will be asked again.</source>
   <translation>Die Einheit konnte nicht gemerkt werden; Sie werden wieder gefragt.</translation>
  </message>
  <message>
   <source>A project cannot be added to other work; open it by itself.</source>
   <translation>Ein Projekt lässt sich nicht zu anderer Arbeit hinzufügen; öffnen Sie es für sich.</translation>
  </message>
  <message>
   <source>Opened {0}</source>
   <translation>{0} geöffnet</translation>
  </message>
  <message>
   <source>{0} was changed since; this work keeps the outlines as they were.</source>
   <translation>{0} wurde seitdem geändert; diese Arbeit behält die Umrisse, wie sie waren.</translation>
  </message>
  <message>
   <source>Saved {0}</source>
   <translation>{0} gespeichert</translation>
  </message>
  <message>
   <source>Nothing is chosen; choose an outline to write.</source>
   <translation>Nichts ist gewählt; wählen Sie einen Umriss zum Schreiben.</translation>
  </message>
  <message>
   <source>There is nothing to cut yet; mend what the checks say first.</source>
   <translation>Es gibt noch nichts zu schneiden; beheben Sie zuerst, was die Prüfungen sagen.</translation>
  </message>
  <message>
   <source>1 file</source>
   <translation>1 Datei</translation>
  </message>
  <message>
   <source>{0} files</source>
   <translation>{0} Dateien</translation>
  </message>
  <message>
   <source>Wrote {0} into {1}</source>
   <translation>{0} nach {1} geschrieben</translation>
  </message>
  <message>
   <source>Writing failed ({0}); nothing was changed.</source>
   <translation>Schreiben misslang ({0}); nichts wurde geändert.</translation>
  </message>
  <message>
   <source>untitled work</source>
   <translation>Arbeit ohne Namen</translation>
  </message>
  <message>
   <source>Recovered work</source>
   <translation>Wiederhergestellte Arbeit</translation>
  </message>
  <message>
   <source>Recovered {0}; it is not saved yet</source>
   <translation>{0} wiederhergestellt; noch nicht gespeichert</translation>
  </message>
 </context>
 <context>
  <name>ExportPage</name>
  <message>
   <source>Save outlines to cut</source>
   <translation>Umrisse zum Schneiden sichern</translation>
  </message>
  <message>
   <source>both</source>
   <translation>beide</translation>
  </message>
  <message>
   <source>the pocket</source>
   <translation>die Tasche</translation>
  </message>
  <message>
   <source>the plug</source>
   <translation>die Einlage</translation>
  </message>
  <message>
   <source>&amp;Halves</source>
   <translation>&amp;Hälften</translation>
  </message>
  <message>
   <source>Each goes into files of its own.</source>
   <translation>Jede kommt in eigene Dateien.</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>A half that is cut face down is written as its mirror image.</source>
   <translation>Eine Hälfte, die mit der Sichtseite nach unten geschnitten wird, wird als Spiegelbild geschrieben.</translation>
  </message>
  <message>
   <source>&amp;Mirrored</source>
   <translation>&amp;Gespiegelt</translation>
  </message>
  <message>
   <source>&amp;Folder</source>
   <translation>&amp;Ordner</translation>
  </message>
  <message>
   <source>It is made if it is not there.</source>
   <translation>Er wird angelegt, wenn er fehlt.</translation>
  </message>
  <message>
   <source>finished and roughing outlines</source>
   <translation>Schlicht- und Schruppumrisse</translation>
  </message>
  <message>
   <source>finished outlines</source>
   <translation>Schlichtumrisse</translation>
  </message>
  <message>
   <source>roughing outlines</source>
   <translation>Schruppumrisse</translation>
  </message>
  <message>
   <source>Roughing outlines are there where a finishing allowance is.</source>
   <translation>Schruppumrisse gibt es, wo ein Schlichtaufmaß steht.</translation>
  </message>
  <message>
   <source>&amp;Passes</source>
   <translation>Gän&amp;ge</translation>
  </message>
  <message>
   <source>on the finished edge</source>
   <translation>auf der fertigen Kante</translation>
  </message>
  <message>
   <source>half a kerf off it</source>
   <translation>eine halbe Schnittfuge daneben</translation>
  </message>
  <message>
   <source>For a beam or blade on the line. The machine offsets for a round cutter itself.</source>
   <translation>Für einen Strahl oder eine Klinge auf der Linie. Um einen runden Fräser rückt die Maschine selbst.</translation>
  </message>
  <message>
   <source>No kerf is given, so the line lies on the edge either way.</source>
   <translation>Es ist keine Schnittfuge angegeben, die Linie liegt so oder so auf der Kante.</translation>
  </message>
  <message>
   <source>&amp;Line</source>
   <translation>&amp;Linie</translation>
  </message>
  <message>
   <source>as drawn</source>
   <translation>wie gezeichnet</translation>
  </message>
  <message>
   <source>lower left corner</source>
   <translation>Ecke unten links</translation>
  </message>
  <message>
   <source>centre</source>
   <translation>Mitte</translation>
  </message>
  <message>
   <source>Where 0, 0 lies, of all that is in one file.</source>
   <translation>Wo 0, 0 liegt, von allem in einer Datei.</translation>
  </message>
  <message>
   <source>&amp;Origin</source>
   <translation>&amp;Nullpunkt</translation>
  </message>
  <message>
   <source>one for all pieces</source>
   <translation>eine für alle Teile</translation>
  </message>
  <message>
   <source>one for each piece</source>
   <translation>eine für jedes Teil</translation>
  </message>
  <message>
   <source>Each outline keeps its id either way.</source>
   <translation>Jeder Umriss behält so oder so seinen Namen.</translation>
  </message>
  <message>
   <source>Fil&amp;es</source>
   <translation>Dat&amp;eien</translation>
  </message>
  <message>
   <source>R2000 states its unit. SVG is always written beside it.</source>
   <translation>R2000 nennt seine Einheit. SVG wird immer daneben geschrieben.</translation>
  </message>
  <message>
   <source>&amp;DXF</source>
   <translation>&amp;DXF</translation>
  </message>
  <message>
   <source>&amp;Choose folder…</source>
   <translation>Ordner &amp;wählen…</translation>
  </message>
  <message>
   <source>&amp;Write</source>
   <translation>&amp;Schreiben</translation>
  </message>
  <message>
   <source>&amp;Go back</source>
   <translation>&amp;Zurück</translation>
  </message>
  <message>
   <source>DXF R12 cannot say what its unit is: choose millimetres where the file is opened.</source>
   <translation>DXF R12 kann seine Einheit nicht nennen: Wählen Sie Millimeter, wo die Datei geöffnet wird.</translation>
  </message>
  <message>
   <source>That is no folder; name one, such as “cut” beside the drawing.</source>
   <translation>Das ist kein Ordner; nennen Sie einen, etwa „schneiden“ neben der Zeichnung.</translation>
  </message>
 </context>
 <context>
  <name>export</name>
  <message>
   <source>{0}: {1} points became {2} arcs and {3} lines, off by {4} µm at most</source>
   <translation>{0}: aus {1} Punkten wurden {2} Bögen und {3} Strecken, höchstens {4} µm daneben</translation>
  </message>
 </context>
 <context>
  <name>TextPage</name>
  <message>
   <source>&amp;Close</source>
   <translation>&amp;Schließen</translation>
  </message>
 </context>
 <context>
  <name>help</name>
  <message>
   <source>Everywhere</source>
   <translation>Überall</translation>
  </message>
  <message>
   <source>On the gap map</source>
   <translation>Auf der Spaltkarte</translation>
  </message>
  <message>
   <source>On the fit ruler</source>
   <translation>Auf dem Passlineal</translation>
  </message>
  <message>
   <source>Plugs that fit their pockets. MIT licence; all calculation happens on this computer.</source>
   <translation>Einlagen, die in ihre Taschen passen. MIT-Lizenz; gerechnet wird nur auf diesem Rechner.</translation>
  </message>
  <message>
   <source>From a drawing to a plug that fits</source>
   <translation>Von der Zeichnung zur passenden Einlage</translation>
  </message>
  <message>
   <source>Open the outline of a pocket, or drop it on the window. The sentence at the top says the whole job; change any box in it.</source>
   <translation>Öffnen Sie den Umriss einer Tasche, oder legen Sie ihn auf dem Fenster ab. Der Satz oben sagt die ganze Aufgabe; ändern Sie jedes Feld darin.</translation>
  </message>
  <message>
   <source>The verdict below it says whether the plug goes in, and offers the one thing to do if not.</source>
   <translation>Das Urteil darunter sagt, ob die Einlage hineingeht, und bietet an, was sonst zu tun ist.</translation>
  </message>
  <message>
   <source>Drag the handle of the fit ruler, or type a clearance. It is always the gap at one wall, “per side”; overall is twice that.</source>
   <translation>Ziehen Sie den Griff des Passlineals, oder geben Sie ein Spiel ein. Es ist immer der Spalt an einer Wand, „je Seite“; gesamt ist das Doppelte.</translation>
  </message>
  <message>
   <source>Walk the tightest places with N on the map. The loupe shows each at true scale.</source>
   <translation>Gehen Sie mit N auf der Karte die engsten Stellen durch. Die Lupe zeigt jede maßstäblich.</translation>
  </message>
  <message>
   <source>Choose “Save outlines to cut”. Both halves are written as DXF and SVG, read back and compared.</source>
   <translation>Wählen Sie „Umrisse zum Schneiden speichern“. Beide Hälften werden als DXF und SVG geschrieben, zurückgelesen und verglichen.</translation>
  </message>
  <message>
   <source>The words</source>
   <translation>Die Wörter</translation>
  </message>
  <message>
   <source>Pocket and plug: the recess, and what fills it. The host is the part with the pocket.</source>
   <translation>Tasche und Einlage: die Vertiefung, und was sie füllt. Der Träger ist das Teil mit der Tasche.</translation>
  </message>
  <message>
   <source>Clearance per side: the gap at one wall. Negative is interference: the plug is larger.</source>
   <translation>Spiel je Seite: der Spalt an einer Wand. Negativ ist Übermaß: die Einlage ist größer.</translation>
  </message>
  <message>
   <source>To cut, already cut, finished: only a half that is to cut may change.</source>
   <translation>Zu schneiden, schon geschnitten, fertig: nur eine Hälfte, die noch zu schneiden ist, darf sich ändern.</translation>
  </message>
  <message>
   <source>As cut: what a round cutter really leaves, not what was drawn.</source>
   <translation>Wie geschnitten: was ein runder Fräser wirklich lässt, nicht was gezeichnet wurde.</translation>
  </message>
  <message>
   <source>Corner relief: what is done where a round cutter cannot go.</source>
   <translation>Eckenfreistellung: was geschieht, wohin ein runder Fräser nicht kommt.</translation>
  </message>
  <message>
   <source>Finishing allowance: stock that roughing leaves on the wall for the finishing pass.</source>
   <translation>Schlichtaufmaß: was das Schruppen an der Wand für den Schlichtgang lässt.</translation>
  </message>
  <message>
   <source>Proud, flush, below: where the plug ends against the host's face.</source>
   <translation>Überstehend, bündig, vertieft: wo die Einlage gegen die Trägerfläche endet.</translation>
  </message>
  <message>
   <source>How it is worked out</source>
   <translation>Wie gerechnet wird</translation>
  </message>
  <message>
   <source>A cutter of radius R reaches all that its disk can sweep inside the pocket: corners come out round.</source>
   <translation>Ein Fräser vom Radius R erreicht alles, was seine Scheibe in der Tasche überstreicht: Ecken werden rund.</translation>
  </message>
  <message>
   <source>The plug is the pocket shrunk by the clearance. Its own cutter runs outside it and fills its notches; where that would bite, the notch is relieved, or both halves are rounded to match.</source>
   <translation>Die Einlage ist die Tasche, um das Spiel verkleinert. Ihr Fräser läuft außen und füllt ihre Kerben; wo das anstieße, wird die Kerbe freigestellt, oder beide Hälften werden passend gerundet.</translation>
  </message>
  <message>
   <source>The gap is measured along both walls, both ways. Whether the plug goes in rests on the smallest gap, never on the mean.</source>
   <translation>Der Spalt wird entlang beider Wände gemessen, in beide Richtungen. Ob die Einlage hineingeht, entscheidet der kleinste Spalt, nie der mittlere.</translation>
  </message>
  <message>
   <source>Cautions</source>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <source>Measure the cutter: an error in its diameter costs its full amount per side.</source>
   <translation>Messen Sie den Fräser: ein Fehler im Durchmesser geht je Seite voll ein.</translation>
  </message>
  <message>
   <source>Cut a trial before the good piece. The feel words are a place to start, not a promise.</source>
   <translation>Schneiden Sie erst einen Versuch. Die Sitzwörter sind ein Anfang, kein Versprechen.</translation>
  </message>
  <message>
   <source>Press fits store force: load straight, wear eye protection, keep hands clear.</source>
   <translation>Presssitze speichern Kraft: gerade einpressen, Augenschutz tragen, Hände fernhalten.</translation>
  </message>
  <message>
   <source>The program does not know your machine, your material or your clamps. You do.</source>
   <translation>Das Programm kennt weder Ihre Maschine noch Ihren Werkstoff noch Ihre Spannmittel. Sie schon.</translation>
  </message>
  <message>
   <source>next tight spot</source>
   <translation>nächste enge Stelle</translation>
  </message>
  <message>
   <source>previous tight spot</source>
   <translation>vorige enge Stelle</translation>
  </message>
  <message>
   <source>zoom about the middle</source>
   <translation>um die Mitte zoomen</translation>
  </message>
  <message>
   <source>move the map</source>
   <translation>Karte bewegen</translation>
  </message>
  <message>
   <source>fit to view</source>
   <translation>alles zeigen</translation>
  </message>
  <message>
   <source>measure between two points</source>
   <translation>zwischen zwei Punkten messen</translation>
  </message>
  <message>
   <source>move the map; the loupe follows the pointer while Space is held</source>
   <translation>Karte bewegen; die Lupe folgt dem Zeiger, solange die Leertaste gehalten wird</translation>
  </message>
  <message>
   <source>1 micrometre</source>
   <translation>1 Mikrometer</translation>
  </message>
  <message>
   <source>10 micrometres</source>
   <translation>10 Mikrometer</translation>
  </message>
  <message>
   <source>50 micrometres</source>
   <translation>50 Mikrometer</translation>
  </message>
  <message>
   <source>back to where the drag began</source>
   <translation>zurück zum Anfang des Ziehens</translation>
  </message>
 </context>
 <context>
  <name>MapLink</name>
  <message>
   <source>at the place of the check</source>
   <translation>am Ort der Prüfung</translation>
  </message>
  <message>
   <source>gap {0}</source>
   <translation>Spalt {0}</translation>
  </message>
  <message>
   <source>Measured {0}: {1} across, {2} up</source>
   <translation>Gemessen {0}: {1} quer, {2} hoch</translation>
  </message>
  <message>
   <source>zoom {0} %</source>
   <translation>Zoom {0} %</translation>
  </message>
 </context>
 <context>
  <name>measured</name>
  <message>
   <source>Readings belong to one pocket; choose the outline of that pocket alone.</source>
   <translation>Messwerte gehören zu einer Tasche; wählen Sie allein deren Umriss.</translation>
  </message>
 </context>
 <context>
  <name>menus</name>
  <message>
   <source>Open &amp;recent</source>
   <translation>&amp;Zuletzt geöffnet</translation>
  </message>
  <message>
   <source>&amp;File</source>
   <translation>&amp;Datei</translation>
  </message>
  <message>
   <source>&amp;Edit</source>
   <translation>&amp;Bearbeiten</translation>
  </message>
  <message>
   <source>&amp;View</source>
   <translation>&amp;Ansicht</translation>
  </message>
  <message>
   <source>&amp;Unit</source>
   <translation>&amp;Einheit</translation>
  </message>
  <message>
   <source>&amp;Colours</source>
   <translation>&amp;Farben</translation>
  </message>
  <message>
   <source>H&amp;alves</source>
   <translation>&amp;Hälften</translation>
  </message>
  <message>
   <source>&amp;Help</source>
   <translation>H&amp;ilfe</translation>
  </message>
 </context>
 <context>
  <name>Opener</name>
  <message>
   <source>The file could not be read ({0}); please report it with the file.</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>CheckRow</name>
  <message>
   <source>Blocks</source>
   <translation>Sperrt</translation>
  </message>
  <message>
   <source>Look</source>
   <translation>Ansehen</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <source>Show</source>
   <translation>Zeigen</translation>
  </message>
  <message>
   <source>Show: {0}</source>
   <translation>Zeigen: {0}</translation>
  </message>
 </context>
 <context>
  <name>ChecksPanel</name>
  <message>
   <source>Checks</source>
   <translation>Prüfungen</translation>
  </message>
  <message>
   <source>Nothing stands in the way of cutting.</source>
   <translation>Dem Schneiden steht nichts im Weg.</translation>
  </message>
  <message>
   <source>At the bench</source>
   <translation>An der Werkbank</translation>
  </message>
  <message>
   <source>Before cutting</source>
   <translation>Vor dem Schneiden</translation>
  </message>
  <message>
   <source>Notes on the drawing</source>
   <translation>Hinweise zur Zeichnung</translation>
  </message>
  <message>
   <source>{0} more of the same kind are in the report that the export writes.</source>
   <translation>{0} weitere dieser Art stehen im Bericht der Ausgabe.</translation>
  </message>
 </context>
 <context>
  <name>DropHalves</name>
  <message>
   <source>Drop an outline: left half as pocket, right half as plug</source>
   <translation>Umriss ablegen: linke Hälfte als Tasche, rechte als Einlage</translation>
  </message>
  <message>
   <source>drop on this half: use as pocket</source>
   <translation>hier ablegen: als Tasche nehmen</translation>
  </message>
  <message>
   <source>drop on this half: use as plug</source>
   <translation>hier ablegen: als Einlage nehmen</translation>
  </message>
  <message>
   <source>Use as pocket</source>
   <translation>Als Tasche nehmen</translation>
  </message>
  <message>
   <source>Use as plug</source>
   <translation>Als Einlage nehmen</translation>
  </message>
 </context>
 <context>
  <name>RecentRow</name>
  <message>
   <source>moved or on another disk, press to look for it</source>
   <translation>verschoben oder auf anderem Laufwerk, drücken zum Suchen</translation>
  </message>
 </context>
 <context>
  <name>EmptyPage</name>
  <message>
   <source>Drop the outline of a pocket or a plug here.</source>
   <translation>Legen Sie hier den Umriss einer Tasche oder Einlage ab.</translation>
  </message>
  <message>
   <source>You get the other half, where it will be tight, and files to cut.</source>
   <translation>Sie bekommen die andere Hälfte, wo es eng wird, und Dateien zum Schneiden.</translation>
  </message>
  <message>
   <source>&amp;Open outline</source>
   <translation>Umriss ö&amp;ffnen</translation>
  </message>
  <message>
   <source>Try the &amp;sample</source>
   <translation>&amp;Beispiel ansehen</translation>
  </message>
  <message>
   <source>&amp;Measured pocket</source>
   <translation>Tasche nach &amp;Maß</translation>
  </message>
  <message>
   <source>DXF or SVG. Paste works too. Your file is never changed.</source>
   <translation>DXF oder SVG. Einfügen geht auch. Ihre Datei wird nie geändert.</translation>
  </message>
 </context>
 <context>
  <name>RecentPanel</name>
  <message>
   <source>Recent work</source>
   <translation>Letzte Arbeiten</translation>
  </message>
  <message>
   <source>Clear list</source>
   <translation>Liste leeren</translation>
  </message>
  <message>
   <source>What you open will be listed here.</source>
   <translation>Was Sie öffnen, steht dann hier.</translation>
  </message>
  <message>
   <source>About the sample</source>
   <translation>Zum Beispiel</translation>
  </message>
  <message>
   <source>A leaf fitted into a disc, with one check left open on purpose. Change anything; undo takes it all back.</source>
   <translation>Ein Blatt, in eine Scheibe eingepasst; eine Prüfung ist mit Absicht offen. Ändern Sie alles; Rückgängig nimmt es zurück.</translation>
  </message>
 </context>
 <context>
  <name>Legend</name>
  <message>
   <source>Legend of the gap map</source>
   <translation>Legende der Spaltkarte</translation>
  </message>
 </context>
 <context>
  <name>OverlayButtons</name>
  <message>
   <source>Roughing</source>
   <translation>Schruppen</translation>
  </message>
  <message>
   <source>The outlines of the roughing pass, if any.</source>
   <translation>Die Umrisse des Schruppgangs, wenn es einen gibt.</translation>
  </message>
  <message>
   <source>Left in corners</source>
   <translation>Rest in Ecken</translation>
  </message>
  <message>
   <source>Stock the cutter cannot reach.</source>
   <translation>Werkstoff, den der Fräser nicht erreicht.</translation>
  </message>
  <message>
   <source>Relief</source>
   <translation>Freistellung</translation>
  </message>
  <message>
   <source>Where a corner was cut away.</source>
   <translation>Wo eine Ecke weggeschnitten wurde.</translation>
  </message>
  <message>
   <source>Cutter</source>
   <translation>Fräser</translation>
  </message>
  <message>
   <source>The cutter at the pointer, to scale.</source>
   <translation>Der Fräser am Zeiger, maßstäblich.</translation>
  </message>
  <message>
   <source>Measure</source>
   <translation>Messen</translation>
  </message>
  <message>
   <source>Click two points; they snap. Key M.</source>
   <translation>Zwei Punkte anklicken; sie rasten ein. Taste M.</translation>
  </message>
 </context>
 <context>
  <name>Notice</name>
  <message>
   <source>Dismiss</source>
   <translation>Schließen</translation>
  </message>
 </context>
 <context>
  <name>OutlineRow</name>
  <message>
   <source>leads</source>
   <translation>führt</translation>
  </message>
 </context>
 <context>
  <name>OutlinesPanel</name>
  <message>
   <source>What is chosen here is fitted and written. The first one leads.</source>
   <translation>Was hier gewählt ist, wird eingepasst und geschrieben. Der erste führt.</translation>
  </message>
  <message>
   <source>Outlines of the drawing</source>
   <translation>Umrisse der Zeichnung</translation>
  </message>
 </context>
 <context>
  <name>PartsView</name>
  <message>
   <source>Share of parts with the wanted feel</source>
   <translation>Anteil der Teile mit dem gewollten Sitz</translation>
  </message>
  <message>
   <source>At worst</source>
   <translation>Schlimmstenfalls</translation>
  </message>
  <message>
   <source>Root sum square</source>
   <translation>Wurzel der Quadratsumme</translation>
  </message>
  <message>
   <source>Largest error</source>
   <translation>Größter Fehler</translation>
  </message>
  <message>
   <source>{0} % of parts have the wanted feel: {1}.</source>
   <translation>{0} % der Teile sitzen wie gewollt: {1}.</translation>
  </message>
  <message>
   <source>tighter</source>
   <translation>enger</translation>
  </message>
  <message>
   <source>looser</source>
   <translation>loser</translation>
  </message>
  <message>
   <source>{0} to {1} {4} per side
({2} to {3} overall)</source>
   <translation>{0} bis {1} {4} je Seite
({2} bis {3} gesamt)</translation>
  </message>
  <message>
   <source>Stop adjusting: a change would be smaller than what your machine repeats to.</source>
   <translation>Nicht weiter nachstellen: eine Änderung wäre kleiner als das, worauf Ihre Maschine wiederholt.</translation>
  </message>
  <message>
   <source>Add {0} of clearance.</source>
   <translation>{0} mehr Spiel geben.</translation>
  </message>
  <message>
   <source>Take off {0} of clearance.</source>
   <translation>{0} Spiel wegnehmen.</translation>
  </message>
 </context>
 <context>
  <name>RulerBar</name>
  <message>
   <source>Fit ruler</source>
   <translation>Passlineal</translation>
  </message>
  <message>
   <source>Zones are a start; your trials move them.</source>
   <translation>Ein Anfang; Ihre Versuche verschieben die Zonen.</translation>
  </message>
  <message>
   <source>Clearance per side beside the ruler</source>
   <translation>Spiel je Seite neben dem Lineal</translation>
  </message>
  <message>
   <source>Clearance per side: the gap at one wall; overall is twice that.</source>
   <translation>Spiel je Seite: der Spalt an einer Wand; gesamt ist das Doppelte.</translation>
  </message>
  <message>
   <source>clearance per side, {0}</source>
   <translation>Spiel je Seite, {0}</translation>
  </message>
 </context>
 <context>
  <name>SeatPanel</name>
  <message>
   <source>How the plug was moved</source>
   <translation>Wie die Einlage bewegt wurde</translation>
  </message>
  <message>
   <source>Search again</source>
   <translation>Neu suchen</translation>
  </message>
  <message>
   <source>&lt;b&gt;Search again&lt;/b&gt;&lt;br&gt;Looks for the seat; the search was stopped before it had one.</source>
   <translation>&lt;b&gt;Neu suchen&lt;/b&gt;&lt;br&gt;Sucht den Sitz; die Suche wurde angehalten, bevor sie einen hatte.</translation>
  </message>
  <message>
   <source>Outline of the plug</source>
   <translation>Umriss der Einlage</translation>
  </message>
  <message>
   <source>Both halves are made, so the plug has an outline of its own. It is never changed.</source>
   <translation>Beide Hälften sind gefertigt, also hat die Einlage einen eigenen Umriss. Er wird nie geändert.</translation>
  </message>
  <message>
   <source>How the plug may move</source>
   <translation>Wie sich die Einlage bewegen darf</translation>
  </message>
  <message>
   <source>It is moved to where its smallest gap is largest, as a careful hand would push it. A turn is tried only if asked for: it could hide a wrong plug.</source>
   <translation>Sie wird dorthin geschoben, wo ihr kleinster Spalt am größten ist, wie eine vorsichtige Hand sie schöbe. Gedreht wird nur auf Wunsch: das könnte eine falsche Einlage verdecken.</translation>
  </message>
  <message>
   <source>shift it</source>
   <translation>schieben</translation>
  </message>
  <message>
   <source>shift and turn it</source>
   <translation>schieben und drehen</translation>
  </message>
  <message>
   <source>leave it as drawn</source>
   <translation>liegen lassen, wie gezeichnet</translation>
  </message>
  <message>
   <source>Seat of the plug</source>
   <translation>Sitz der Einlage</translation>
  </message>
  <message>
   <source>Plug</source>
   <translation>Einlage</translation>
  </message>
  <message>
   <source>To seat it</source>
   <translation>Zum Einsetzen</translation>
  </message>
  <message>
   <source>From another drawing…</source>
   <translation>Aus einer anderen Zeichnung…</translation>
  </message>
  <message>
   <source>choose the plug</source>
   <translation>Einlage wählen</translation>
  </message>
  <message>
   <source>Both halves are made. Choose the outline of the plug, and the fit is measured.</source>
   <translation>Beide Hälften sind gefertigt. Wählen Sie den Umriss der Einlage, dann wird die Passung gemessen.</translation>
  </message>
  <message>
   <source>It lies as it is drawn.</source>
   <translation>Sie liegt, wie sie gezeichnet ist.</translation>
  </message>
  <message>
   <source>It is drawn where it sits best.</source>
   <translation>Sie ist dort gezeichnet, wo sie am besten sitzt.</translation>
  </message>
  <message>
   <source>Moved by {0} along X and {1} along Y.</source>
   <translation>Um {0} entlang X und {1} entlang Y geschoben.</translation>
  </message>
  <message>
   <source>Moved by {0} along X and {1} along Y, turned by {2}° counter-clockwise.</source>
   <translation>Um {0} entlang X und {1} entlang Y geschoben, um {2}° gegen den Uhrzeigersinn gedreht.</translation>
  </message>
  <message>
   <source>Looking for its seat …</source>
   <translation>Ihr Sitz wird gesucht …</translation>
  </message>
 </context>
 <context>
  <name>SentenceBar</name>
  <message>
   <source>&lt;b&gt;Checks&lt;/b&gt;&lt;br&gt;What to look at before cutting, the heaviest first.</source>
   <translation>&lt;b&gt;Prüfungen&lt;/b&gt;&lt;br&gt;Was vor dem Schneiden anzusehen ist, das Schwerste zuerst.</translation>
  </message>
  <message>
   <source>The whole job is this sentence. Once an outline is open, every box in it can be changed.</source>
   <translation>Die ganze Aufgabe ist dieser Satz. Ist ein Umriss offen, lässt sich jedes Feld darin ändern.</translation>
  </message>
  <message>
   <source>Plug</source>
   <translation>Einlage</translation>
  </message>
  <message>
   <source>Pocket</source>
   <translation>Tasche</translation>
  </message>
  <message>
   <source>What it is called and made of, as the cut sheet will say it.</source>
   <translation>Wie sie heißt und woraus sie ist, so wie es auf dem Werkblatt steht.</translation>
  </message>
  <message>
   <source>Name of the {0}</source>
   <translation>Name ({0})</translation>
  </message>
  <message>
   <source>Material of the {0}</source>
   <translation>Werkstoff ({0})</translation>
  </message>
  <message>
   <source>&amp;Name</source>
   <translation>&amp;Name</translation>
  </message>
  <message>
   <source>&amp;Material</source>
   <translation>&amp;Werkstoff</translation>
  </message>
  <message>
   <source>State of the {0}</source>
   <translation>Zustand ({0})</translation>
  </message>
  <message>
   <source>Not cut yet: it may be shaped to match.</source>
   <translation>Noch nicht geschnitten: sie darf angepasst werden.</translation>
  </message>
  <message>
   <source>It is what it is and never changes; the other half gives way.</source>
   <translation>Sie ist, wie sie ist, und ändert sich nie; die andere Hälfte gibt nach.</translation>
  </message>
  <message>
   <source>Finished or coated: not even bench work is possible.</source>
   <translation>Fertig oder beschichtet: auch Handarbeit ist nicht mehr möglich.</translation>
  </message>
  <message>
   <source>Only a half that is to cut may change.</source>
   <translation>Nur eine Hälfte, die noch zu schneiden ist, darf sich ändern.</translation>
  </message>
  <message>
   <source>Cutter of the {0}</source>
   <translation>Fräser ({0})</translation>
  </message>
  <message>
   <source>Its measured diameter: an error here costs its full amount per side.</source>
   <translation>Sein gemessener Durchmesser: ein Fehler geht je Seite voll ein.</translation>
  </message>
  <message>
   <source>Cutter diameter</source>
   <translation>Fräserdurchmesser</translation>
  </message>
  <message>
   <source>It is the &amp;kerf of a beam or blade</source>
   <translation>Es ist die Schnitt&amp;fuge von Strahl oder Klinge</translation>
  </message>
  <message>
   <source>&amp;Diameter</source>
   <translation>&amp;Durchmesser</translation>
  </message>
  <message>
   <source>Feel</source>
   <translation>Sitz</translation>
  </message>
  <message>
   <source>How it goes together; picking a word sets the clearance.</source>
   <translation>Wie es zusammengeht; ein Wort zu wählen setzt das Spiel.</translation>
  </message>
  <message>
   <source>Clearance per side</source>
   <translation>Spiel je Seite</translation>
  </message>
  <message>
   <source>Clearance per side: the gap at one wall; negative is interference.
Type 0.05, 2 thou, 1/64 in …</source>
   <translation>Spiel je Seite: der Spalt an einer Wand; negativ ist Übermaß.
Geben Sie ein: 0,05, 2 thou, 1/64 in …</translation>
  </message>
  <message>
   <source>Corners</source>
   <translation>Ecken</translation>
  </message>
  <message>
   <source>What is done where a round cutter cannot go.</source>
   <translation>Was geschieht, wohin ein runder Fräser nicht kommt.</translation>
  </message>
  <message>
   <source>Finishing allowance</source>
   <translation>Schlichtaufmaß</translation>
  </message>
  <message>
   <source>Stock that roughing leaves on both walls for the finishing pass; 0 for none.</source>
   <translation>Was das Schruppen an beiden Wänden für den Schlichtgang stehen lässt; 0 für nichts.</translation>
  </message>
  <message>
   <source>&amp;Leave on the wall</source>
   <translation>An der Wand &amp;lassen</translation>
  </message>
  <message>
   <source>Seat</source>
   <translation>Höhe</translation>
  </message>
  <message>
   <source>How far above the host face the plug shall end; negative is below.</source>
   <translation>Wie weit die Einlage über der Trägerfläche enden soll; negativ ist darunter.</translation>
  </message>
  <message>
   <source>Above the host face</source>
   <translation>Über der Trägerfläche</translation>
  </message>
  <message>
   <source>&amp;Above the host face</source>
   <translation>&amp;Über der Trägerfläche</translation>
  </message>
  <message>
   <source>Under the plug</source>
   <translation>Unter der Einlage</translation>
  </message>
  <message>
   <source>Tape or glue under it, as thick as it ends up.</source>
   <translation>Klebeband oder Kleber darunter, so dick wie am Ende.</translation>
  </message>
  <message>
   <source>Tape or glue</source>
   <translation>Klebeband oder Kleber</translation>
  </message>
  <message>
   <source>Thickness of tape or glue</source>
   <translation>Dicke von Klebeband oder Kleber</translation>
  </message>
  <message>
   <source>&amp;Tape or glue</source>
   <translation>&amp;Klebeband oder Kleber</translation>
  </message>
  <message>
   <source>Th&amp;ickness</source>
   <translation>&amp;Dicke</translation>
  </message>
  <message>
   <source>The side that shows faces the cutter: cut as drawn.</source>
   <translation>Die Sichtseite zeigt zum Fräser: wie gezeichnet schneiden.</translation>
  </message>
  <message>
   <source>The side that shows lies on the bed: the outline is cut mirrored.</source>
   <translation>Die Sichtseite liegt auf dem Tisch: der Umriss wird gespiegelt geschnitten.</translation>
  </message>
  <message>
   <source>Facing</source>
   <translation>Lage</translation>
  </message>
  <message>
   <source>Which side of the plug faces the cutter.</source>
   <translation>Welche Seite der Einlage zum Fräser zeigt.</translation>
  </message>
  <message>
   <source>{0} fittings, each:</source>
   <translation>{0} Passungen, jede:</translation>
  </message>
  <message>
   <source>{0} fittings, the first:</source>
   <translation>{0} Passungen, die erste:</translation>
  </message>
  <message>
   <source>Fit sentence</source>
   <translation>Passsatz</translation>
  </message>
  <message>
   <source>That half is made already and stays as it is.</source>
   <translation>Diese Hälfte gibt es schon; sie bleibt, wie sie ist.</translation>
  </message>
  <message>
   <source>No checks yet</source>
   <translation>Noch keine Prüfung</translation>
  </message>
 </context>
 <context>
  <name>SpotPanel</name>
  <message>
   <source>Loupe</source>
   <translation>Lupe</translation>
  </message>
  <message>
   <source>Previous tight spot</source>
   <translation>Vorige enge Stelle</translation>
  </message>
  <message>
   <source>Next tight spot</source>
   <translation>Nächste enge Stelle</translation>
  </message>
  <message>
   <source>Walks the tightest places, the worst first.</source>
   <translation>Geht die engsten Stellen durch, die schlimmste zuerst.</translation>
  </message>
  <message>
   <source>at the pointer</source>
   <translation>am Zeiger</translation>
  </message>
  <message>
   <source>spot {0} of {1}</source>
   <translation>Stelle {0} von {1}</translation>
  </message>
  <message>
   <source>the gap is even all round</source>
   <translation>der Spalt ist rundum gleich</translation>
  </message>
  <message>
   <source>the tightest spot</source>
   <translation>die engste Stelle</translation>
  </message>
 </context>
 <context>
  <name>StackPanel</name>
  <message>
   <source>Stack</source>
   <translation>Aufbau</translation>
  </message>
  <message>
   <source>Pocket depth</source>
   <translation>Tiefe der Tasche</translation>
  </message>
  <message>
   <source>Plug thickness</source>
   <translation>Dicke der Einlage</translation>
  </message>
  <message>
   <source>Readings vary by ±</source>
   <translation>Messwerte schwanken um ±</translation>
  </message>
  <message>
   <source>Depth</source>
   <translation>Tiefe</translation>
  </message>
  <message>
   <source>Thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <source>Varies by ±</source>
   <translation>Schwankt um ±</translation>
  </message>
  <message>
   <source>host</source>
   <translation>Träger</translation>
  </message>
 </context>
 <context>
  <name>StatusStrip</name>
  <message>
   <source>Message</source>
   <translation>Meldung</translation>
  </message>
  <message>
   <source>Progress</source>
   <translation>Fortschritt</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <source>unit {0}</source>
   <translation>Einheit {0}</translation>
  </message>
  <message>
   <source>Unit</source>
   <translation>Einheit</translation>
  </message>
  <message>
   <source>&lt;b&gt;Unit&lt;/b&gt;&lt;br&gt;Shows every length in another unit; nothing else changes.</source>
   <translation>&lt;b&gt;Einheit&lt;/b&gt;&lt;br&gt;Zeigt jede Länge in einer anderen Einheit; sonst ändert sich nichts.</translation>
  </message>
  <message>
   <source>millimetres</source>
   <translation>Millimeter</translation>
  </message>
  <message>
   <source>inches</source>
   <translation>Zoll</translation>
  </message>
  <message>
   <source>thou (0.001 in)</source>
   <translation>Tausendstel Zoll</translation>
  </message>
 </context>
 <context>
  <name>TurnsPanel</name>
  <message>
   <source>Turned and flipped</source>
   <translation>Gedreht und gewendet</translation>
  </message>
  <message>
   <source>Round, but it does not go in at every turn: mark plug and pocket.</source>
   <translation>Rund, geht aber nicht in jeder Drehung hinein: Einlage und Tasche zeichnen.</translation>
  </message>
  <message>
   <source>Round: it goes in at any turn.</source>
   <translation>Rund: geht in jeder Drehung hinein.</translation>
  </message>
  <message>
   <source>It goes in one way only, and looks it.</source>
   <translation>Geht nur auf eine Weise hinein, und das sieht man.</translation>
  </message>
  <message>
   <source>{0} and {1} more</source>
   <translation>{0} und {1} weitere</translation>
  </message>
  <message>
   <source>It looks the same {0}, but does not go in every way: mark plug and pocket.</source>
   <translation>Sieht gleich aus: {0}; geht aber nicht jedes Mal hinein: Einlage und Tasche zeichnen.</translation>
  </message>
  <message>
   <source>It looks the same {0}, and goes in each way.</source>
   <translation>Sieht gleich aus: {0}; geht jedes Mal hinein.</translation>
  </message>
 </context>
 <context>
  <name>VerdictBar</name>
  <message>
   <source>Verdict</source>
   <translation>Urteil</translation>
  </message>
  <message>
   <source>Show</source>
   <translation>Zeigen</translation>
  </message>
  <message>
   <source>&lt;b&gt;Show&lt;/b&gt;&lt;br&gt;Goes to the place in the gap map and the loupe.</source>
   <translation>&lt;b&gt;Zeigen&lt;/b&gt;&lt;br&gt;Geht zur Stelle in Spaltkarte und Lupe.</translation>
  </message>
  <message>
   <source>Mend</source>
   <translation>Beheben</translation>
  </message>
  <message>
   <source>Preview.</source>
   <translation>Vorschau.</translation>
  </message>
 </context>
 <context>
  <name>WorkshopPanel</name>
  <message>
   <source>What the machine gets wrong</source>
   <translation>Was die Maschine falsch macht</translation>
  </message>
  <message>
   <source>How it is cut</source>
   <translation>Wie geschnitten wird</translation>
  </message>
  <message>
   <source>Cutter known to ±</source>
   <translation>Fräser bekannt auf ±</translation>
  </message>
  <message>
   <source>How well its diameter is measured. An error here moves the clearance per side by its full amount, if one cutter cuts both halves.</source>
   <translation>Wie genau sein Durchmesser gemessen ist. Ein Fehler hier ändert das Spiel je Seite um seinen vollen Betrag, wenn ein Fräser beide Hälften schneidet.</translation>
  </message>
  <message>
   <source>Runout</source>
   <translation>Rundlauf</translation>
  </message>
  <message>
   <source>Total reading of a dial gauge on the turning cutter. It cuts wider than it measures.</source>
   <translation>Ganzer Ausschlag einer Messuhr am drehenden Fräser. Er schneidet breiter, als er misst.</translation>
  </message>
  <message>
   <source>Diameter on the label</source>
   <translation>Durchmesser auf dem Schild</translation>
  </message>
  <message>
   <source>What the machine's program reckons with, if that is not the measured diameter; else 0.</source>
   <translation>Womit das Programm der Maschine rechnet, wenn das nicht der gemessene Durchmesser ist; sonst 0.</translation>
  </message>
  <message>
   <source>A width repeats to ±</source>
   <translation>Eine Breite wiederholt sich auf ±</translation>
  </message>
  <message>
   <source>How closely the width of one half comes out again. Below it, adjusting is guesswork.</source>
   <translation>Wie genau die Breite einer Hälfte wieder gelingt. Darunter ist Nachstellen Raterei.</translation>
  </message>
  <message>
   <source>Thickness varies by ±</source>
   <translation>Dicke schwankt um ±</translation>
  </message>
  <message>
   <source>That of the stock. It counts where a tapered kerf makes the walls lean.</source>
   <translation>Die des Materials. Sie zählt, wo eine schräge Schnittfuge die Wände neigt.</translation>
  </message>
  <message>
   <source>How far the temperature may be from the one at which the halves were measured.</source>
   <translation>Wie weit die Temperatur von der abliegen kann, bei der die Hälften gemessen wurden.</translation>
  </message>
  <message>
   <source>Temperature varies by ±</source>
   <translation>Temperatur schwankt um ±</translation>
  </message>
  <message>
   <source>Expansion of the plug less that of the host, in millionths per kelvin.</source>
   <translation>Ausdehnung der Einlage weniger die des Trägers, in Millionsteln je Kelvin.</translation>
  </message>
  <message>
   <source>Expansion of the plug less the host</source>
   <translation>Ausdehnung der Einlage weniger die des Trägers</translation>
  </message>
  <message>
   <source>The cutter is known to ± {cutter} and runs out by {runout}; its label says {label}. A width comes out again to ± {repeats}, the stock's thickness to ± {thickness}. It gets warmer or colder by ± {kelvin}, and the plug grows by {expansion} more than the host.</source>
   <translation>Der Fräser ist bekannt auf ± {cutter} und schlägt um {runout} aus; auf seinem Schild steht {label}. Eine Breite gelingt wieder auf ± {repeats}, die Dicke des Materials auf ± {thickness}. Es wird wärmer oder kälter um ± {kelvin}, und die Einlage wächst um {expansion} mehr als der Träger.</translation>
  </message>
  <message>
   <source>Depth of the pocket: the same number as in the stack.</source>
   <translation>Tiefe der Tasche: dieselbe Zahl wie im Aufbau.</translation>
  </message>
  <message>
   <source>Depth of the pocket</source>
   <translation>Tiefe der Tasche</translation>
  </message>
  <message>
   <source>Depth per pass</source>
   <translation>Tiefe je Durchgang</translation>
  </message>
  <message>
   <source>Most that one pass takes; 0 if open.</source>
   <translation>So viel nimmt ein Durchgang höchstens; 0, wenn das offen ist.</translation>
  </message>
  <message>
   <source>Left on the floor</source>
   <translation>Am Boden bleibt</translation>
  </message>
  <message>
   <source>Stock that the passes leave on the floor, for a last pass of its own.</source>
   <translation>Material, das die Durchgänge am Boden lassen, für einen eigenen letzten.</translation>
  </message>
  <message>
   <source>Floor fillet</source>
   <translation>Bodenkehle</translation>
  </message>
  <message>
   <source>Radius that a worn cutter leaves between wall and floor. A sharp edge of the plug rides up on it.</source>
   <translation>Radius, den ein stumpfer Fräser zwischen Wand und Boden lässt. Eine scharfe Kante der Einlage reitet darauf auf.</translation>
  </message>
  <message>
   <source>Width of the chamfer that lets the plug down over a floor fillet.</source>
   <translation>Breite der Fase, mit der die Einlage über eine Bodenkehle hinunterkommt.</translation>
  </message>
  <message>
   <source>Break of the plug's lower edge</source>
   <translation>Fase an der Unterkante der Einlage</translation>
  </message>
  <message>
   <source>How much wider the cut of a beam is on the show side than on the bed side.</source>
   <translation>Um wie viel die Fuge eines Strahls auf der Sichtseite breiter ist als auf der Bettseite.</translation>
  </message>
  <message>
   <source>Taper of the kerf</source>
   <translation>Schräge der Schnittfuge</translation>
  </message>
  <message>
   <source>The pocket is {depth} deep, at most {pass} a pass, with {floor} left for the floor, and the direction is {milling}. A worn cutter leaves a floor fillet of {fillet}; the plug's lower edge is broken by {edge}. The kerf is wider on the show side by {taper}.</source>
   <translation>Die Tasche ist {depth} tief, höchstens {pass} je Durchgang, {floor} bleiben für den Boden, und die Richtung ist {milling}. Ein stumpfer Fräser lässt eine Bodenkehle von {fillet}; die Unterkante der Einlage ist um {edge} gebrochen. Die Schnittfuge ist auf der Sichtseite um {taper} breiter.</translation>
  </message>
  <message>
   <source>left open</source>
   <translation>offen gelassen</translation>
  </message>
  <message>
   <source>climb</source>
   <translation>Gleichlauf</translation>
  </message>
  <message>
   <source>conventional</source>
   <translation>Gegenlauf</translation>
  </message>
  <message>
   <source>Which way the written contours run. Cut both halves alike, or their errors add up.</source>
   <translation>Wie herum die geschriebenen Konturen laufen. Schneiden Sie beide Hälften gleich, sonst addieren sich ihre Fehler.</translation>
  </message>
  <message>
   <source>Direction of cut</source>
   <translation>Schnittrichtung</translation>
  </message>
  <message>
   <source>Warmth counts once both numbers are there.</source>
   <translation>Wärme zählt, sobald beide Zahlen da sind.</translation>
  </message>
  <message>
   <source>Type what the machine gets wrong, and this says how many parts come out as wanted.</source>
   <translation>Tippen Sie ein, was die Maschine falsch macht, dann steht hier, wie viele Teile werden wie gewollt.</translation>
  </message>
  <message>
   <source>Nothing can be said of many parts yet; see the checks.</source>
   <translation>Über viele Teile lässt sich noch nichts sagen; siehe die Prüfungen.</translation>
  </message>
  <message>
   <source>Working it out.</source>
   <translation>Wird gerechnet.</translation>
  </message>
  <message>
   <source>Both halves are made: what they are, they are. No error is left to come.</source>
   <translation>Beide Hälften sind gefertigt: sie sind, was sie sind. Kein Fehler kommt mehr dazu.</translation>
  </message>
  <message>
   <source>One pass, to {0} {1}.</source>
   <translation>Ein Durchgang, auf {0} {1}.</translation>
  </message>
  <message>
   <source>{0} passes, to {1} {2}.</source>
   <translation>{0} Durchgänge, auf {1} {2}.</translation>
  </message>
 </context>
 <context>
  <name>prompts</name>
  <message>
   <source>Drawings and projects</source>
   <translation>Zeichnungen und Projekte</translation>
  </message>
  <message>
   <source>All files</source>
   <translation>Alle Dateien</translation>
  </message>
  <message>
   <source>Open outline</source>
   <translation>Umriss öffnen</translation>
  </message>
  <message>
   <source>Inlayfit project</source>
   <translation>Inlayfit-Projekt</translation>
  </message>
  <message>
   <source>Save project</source>
   <translation>Projekt speichern</translation>
  </message>
  <message>
   <source>Write outlines into this folder</source>
   <translation>Umrisse in diesen Ordner schreiben</translation>
  </message>
  <message>
   <source>Unsaved work</source>
   <translation>Nicht gespeicherte Arbeit</translation>
  </message>
  <message>
   <source>Save the work on “{0}”?</source>
   <translation>Arbeit an „{0}“ speichern?</translation>
  </message>
  <message>
   <source>No project file holds it yet. Without saving, it is gone.</source>
   <translation>Noch keine Projektdatei enthält sie. Ohne Speichern ist sie weg.</translation>
  </message>
  <message>
   <source>&amp;Save</source>
   <translation>&amp;Speichern</translation>
  </message>
  <message>
   <source>&amp;Leave without saving</source>
   <translation>&amp;Ohne Speichern verlassen</translation>
  </message>
  <message>
   <source>&amp;Go back</source>
   <translation>&amp;Zurück</translation>
  </message>
  <message>
   <source>Files are there already</source>
   <translation>Dateien sind schon da</translation>
  </message>
  <message>
   <source>Replace {0} files in “{1}”?</source>
   <translation>{0} Dateien in „{1}“ ersetzen?</translation>
  </message>
  <message>
   <source>&amp;Replace</source>
   <translation>&amp;Ersetzen</translation>
  </message>
  <message>
   <source>Recover work</source>
   <translation>Arbeit wiederherstellen</translation>
  </message>
  <message>
   <source>Unsaved work on “{0}” was found, last changed {1}.</source>
   <translation>Nicht gespeicherte Arbeit an „{0}“ wurde gefunden, zuletzt geändert {1}.</translation>
  </message>
  <message>
   <source>The program ended without closing. The project file itself was not touched.</source>
   <translation>Das Programm endete, ohne zu schließen. Die Projektdatei selbst wurde nicht berührt.</translation>
  </message>
  <message>
   <source>&amp;Recover</source>
   <translation>&amp;Wiederherstellen</translation>
  </message>
  <message>
   <source>&amp;Discard</source>
   <translation>&amp;Verwerfen</translation>
  </message>
  <message>
   <source>Show &amp;both</source>
   <translation>&amp;Beide zeigen</translation>
  </message>
  <message>
   <source>&amp;Later</source>
   <translation>&amp;Später</translation>
  </message>
 </context>
 <context>
  <name>reading</name>
  <message>
   <source>Choose the unit…</source>
   <translation>Einheit wählen…</translation>
  </message>
  <message>
   <source>Close gaps…</source>
   <translation>Lücken schließen…</translation>
  </message>
  <message>
   <source>Read lines as areas…</source>
   <translation>Linien als Flächen lesen…</translation>
  </message>
  <message>
   <source>Choose layers…</source>
   <translation>Ebenen wählen…</translation>
  </message>
  <message>
   <source>millimetre</source>
   <translation>ein Millimeter</translation>
  </message>
  <message>
   <source>inch</source>
   <translation>ein Zoll</translation>
  </message>
  <message>
   <source>centimetre</source>
   <translation>ein Zentimeter</translation>
  </message>
  <message>
   <source>thousandth of an inch</source>
   <translation>ein Tausendstel Zoll</translation>
  </message>
  <message>
   <source>pixel, 96 to an inch</source>
   <translation>ein Bildpunkt, 96 je Zoll</translation>
  </message>
  <message>
   <source>metre</source>
   <translation>ein Meter</translation>
  </message>
  <message>
   <source>foot</source>
   <translation>ein Fuß</translation>
  </message>
  <message>
   <source>micrometre</source>
   <translation>ein Mikrometer</translation>
  </message>
  <message>
   <source>The drawing is not there any more; open it again to read it in another way.</source>
   <translation>Die Zeichnung ist nicht mehr da; öffnen Sie sie wieder, um sie anders zu lesen.</translation>
  </message>
  <message>
   <source>The drawing could not be looked at ({0}); open it again.</source>
   <translation>Die Zeichnung ließ sich nicht ansehen ({0}); öffnen Sie sie wieder.</translation>
  </message>
 </context>
 <context>
  <name>ReadingPage</name>
  <message>
   <source>Read the drawing anew</source>
   <translation>Die Zeichnung neu lesen</translation>
  </message>
  <message>
   <source>&amp;Painted lines cover their width</source>
   <translation>&amp;Gemalte Linien decken ihre Breite</translation>
  </message>
  <message>
   <source>One drawing &amp;unit is</source>
   <translation>Eine Zeichen&amp;einheit ist</translation>
  </message>
  <message>
   <source>Loose ends this close become one. 0.01 mm is less than a cutter shows.</source>
   <translation>Lose Enden, die so nahe liegen, werden eins. 0,01 mm ist weniger, als ein Fräser zeigt.</translation>
  </message>
  <message>
   <source>&amp;Close gaps up to</source>
   <translation>&amp;Lücken schließen bis</translation>
  </message>
  <message>
   <source>Without this the middle of a painted line is the outline.</source>
   <translation>Sonst ist die Mitte einer gemalten Linie der Umriss.</translation>
  </message>
  <message>
   <source>Lines</source>
   <translation>Linien</translation>
  </message>
  <message>
   <source>Hidden, construction and dimension lines are no outlines unless you tick them.</source>
   <translation>Verborgene Linien, Hilfs- und Maßlinien sind keine Umrisse, außer Sie haken sie an.</translation>
  </message>
  <message>
   <source>&amp;Layers</source>
   <translation>E&amp;benen</translation>
  </message>
  <message>
   <source>what the file says</source>
   <translation>was die Datei sagt</translation>
  </message>
  <message>
   <source>not stated</source>
   <translation>nicht angegeben</translation>
  </message>
  <message>
   <source>The file states none. Your choice is remembered for its folder.</source>
   <translation>Die Datei nennt keine. Ihre Wahl wird für ihren Ordner gemerkt.</translation>
  </message>
  <message>
   <source>Everything is this size then. The file itself is never changed.</source>
   <translation>So groß ist dann alles. Die Datei selbst wird nie geändert.</translation>
  </message>
  <message>
   <source>1 line</source>
   <translation>1 Linie</translation>
  </message>
  <message>
   <source>{0} lines</source>
   <translation>{0} Linien</translation>
  </message>
  <message>
   <source>{0}, for the reader only</source>
   <translation>{0}, nur zum Lesen</translation>
  </message>
  <message>
   <source>&amp;Read anew</source>
   <translation>&amp;Neu lesen</translation>
  </message>
  <message>
   <source>&amp;Go back</source>
   <translation>&amp;Zurück</translation>
  </message>
  <message>
   <source>No layer is ticked; tick one at least.</source>
   <translation>Keine Ebene ist angehakt; haken Sie mindestens eine an.</translation>
  </message>
 </context>
 <context>
  <name>SettingsPage</name>
  <message>
   <source>Settings</source>
   <translation>Einstellungen</translation>
  </message>
  <message>
   <source>&amp;Close</source>
   <translation>&amp;Schließen</translation>
  </message>
  <message>
   <source>Open &amp;folder</source>
   <translation>&amp;Ordner öffnen</translation>
  </message>
  <message>
   <source>&lt;b&gt;Open folder&lt;/b&gt;&lt;br&gt;Shows where the settings are kept.</source>
   <translation>&lt;b&gt;Ordner öffnen&lt;/b&gt;&lt;br&gt;Zeigt, wo die Einstellungen liegen.</translation>
  </message>
 </context>
 <context>
  <name>SizePage</name>
  <message>
   <source>Type a pocket by size</source>
   <translation>Eine Tasche nach Maß eingeben</translation>
  </message>
  <message>
   <source>circle</source>
   <translation>Kreis</translation>
  </message>
  <message>
   <source>rectangle</source>
   <translation>Rechteck</translation>
  </message>
  <message>
   <source>slot with round ends</source>
   <translation>Langloch mit runden Enden</translation>
  </message>
  <message>
   <source>&amp;Shape</source>
   <translation>&amp;Form</translation>
  </message>
  <message>
   <source>Its middle lies at 0, 0.</source>
   <translation>Ihre Mitte liegt bei 0, 0.</translation>
  </message>
  <message>
   <source>&amp;Diameter</source>
   <translation>&amp;Durchmesser</translation>
  </message>
  <message>
   <source>Across the middle, as measured.</source>
   <translation>Über die Mitte, wie gemessen.</translation>
  </message>
  <message>
   <source>&amp;Width</source>
   <translation>&amp;Breite</translation>
  </message>
  <message>
   <source>Along X, from wall to wall.</source>
   <translation>Entlang X, von Wand zu Wand.</translation>
  </message>
  <message>
   <source>&amp;Height</source>
   <translation>&amp;Höhe</translation>
  </message>
  <message>
   <source>Along Y, from wall to wall.</source>
   <translation>Entlang Y, von Wand zu Wand.</translation>
  </message>
  <message>
   <source>Corner &amp;radius</source>
   <translation>Ecken&amp;radius</translation>
  </message>
  <message>
   <source>0 for sharp corners.</source>
   <translation>0 für scharfe Ecken.</translation>
  </message>
  <message>
   <source>&amp;Length</source>
   <translation>&amp;Länge</translation>
  </message>
  <message>
   <source>Over its round ends.</source>
   <translation>Über die runden Enden.</translation>
  </message>
  <message>
   <source>Between its straight walls.</source>
   <translation>Zwischen den geraden Wänden.</translation>
  </message>
  <message>
   <source>&amp;Use this pocket</source>
   <translation>Diese Tasche &amp;nehmen</translation>
  </message>
  <message>
   <source>&amp;Go back</source>
   <translation>&amp;Zurück</translation>
  </message>
 </context>
 <context>
  <name>StationRow</name>
  <message>
   <source>Axis of station {0}</source>
   <translation>Achse der Messstelle {0}</translation>
  </message>
  <message>
   <source>Drawn width at station {0}</source>
   <translation>Gezeichnete Weite an Messstelle {0}</translation>
  </message>
  <message>
   <source>Width read at station {0}</source>
   <translation>Gemessene Weite an Messstelle {0}</translation>
  </message>
 </context>
 <context>
  <name>StationsPage</name>
  <message>
   <source>Pocket as measured</source>
   <translation>Tasche, wie gemessen</translation>
  </message>
  <message>
   <source>Measure the width of the pocket at two stations or more along X and along Y, a long and a short one each.</source>
   <translation>Messen Sie die Weite der Tasche an mindestens zwei Stellen entlang X und entlang Y, je einer langen und einer kurzen.</translation>
  </message>
  <message>
   <source>Axis</source>
   <translation>Achse</translation>
  </message>
  <message>
   <source>Drawn</source>
   <translation>Gezeichnet</translation>
  </message>
  <message>
   <source>Read</source>
   <translation>Gemessen</translation>
  </message>
  <message>
   <source>Off the model</source>
   <translation>Abweichung</translation>
  </message>
  <message>
   <source>&amp;Add a station</source>
   <translation>Messstelle &amp;hinzufügen</translation>
  </message>
  <message>
   <source>One reading &amp;repeats to ±</source>
   <translation>Eine Messung &amp;wiederholt sich auf ±</translation>
  </message>
  <message>
   <source>One reading repeats to</source>
   <translation>Eine Messung wiederholt sich auf</translation>
  </message>
  <message>
   <source>&amp;Fit to this pocket</source>
   <translation>In &amp;diese Tasche einpassen</translation>
  </message>
  <message>
   <source>&amp;Go back</source>
   <translation>&amp;Zurück</translation>
  </message>
 </context>
 <context>
  <name>feel</name>
  <message>
   <source>won’t start</source>
   <translation>fasst nicht</translation>
  </message>
  <message>
   <source>press</source>
   <translation>gepresst</translation>
  </message>
  <message>
   <source>tap-in</source>
   <translation>mit Klopfen</translation>
  </message>
  <message>
   <source>snug</source>
   <translation>satt</translation>
  </message>
  <message>
   <source>slip</source>
   <translation>gleitend</translation>
  </message>
  <message>
   <source>rattles</source>
   <translation>klappernd</translation>
  </message>
  <message>
   <source>the corner does not enter</source>
   <translation>die Ecke greift nicht</translation>
  </message>
  <message>
   <source>vice or arbor</source>
   <translation>Schraubstock oder Dornpresse</translation>
  </message>
  <message>
   <source>mallet and block</source>
   <translation>Hammer und Klotz</translation>
  </message>
  <message>
   <source>thumb pressure, no play</source>
   <translation>Daumendruck, kein Spiel</translation>
  </message>
  <message>
   <source>drops in, slides out</source>
   <translation>fällt hinein, gleitet heraus</translation>
  </message>
  <message>
   <source>moves when shaken</source>
   <translation>bewegt sich beim Schütteln</translation>
  </message>
 </context>
 <context>
  <name>FitRuler</name>
  <message>
   <source>Clearance per side, micrometres</source>
   <translation>Spiel je Seite, Mikrometer</translation>
  </message>
  <message>
   <source>{0} {1} at {2}.</source>
   <translation>{0} {1} bei {2}.</translation>
  </message>
  <message>
   <source>Suggested: {0}.</source>
   <translation>Vorschlag: {0}.</translation>
  </message>
  <message>
   <source>How much room the plug has at each wall; overall is twice that.</source>
   <translation>Wie viel Platz die Einlage an jeder Wand hat; gesamt ist das Doppelte.</translation>
  </message>
 </context>
 <context>
  <name>LengthBox</name>
  <message>
   <source>{0} is outside {1} to {2}; type a length in between.</source>
   <translation>{0} liegt nicht zwischen {1} und {2}; geben Sie eine Länge dazwischen ein.</translation>
  </message>
 </context>
 <context>
  <name>ruler</name>
  <message>
   <source>{0} at {1}</source>
   <translation>{0} bei {1}</translation>
  </message>
  <message>
   <source>suggested {0}</source>
   <translation>Vorschlag {0}</translation>
  </message>
 </context>
 <context>
  <name>stack</name>
  <message>
   <source>depth</source>
   <translation>Tiefe</translation>
  </message>
  <message>
   <source>Depth of the pocket below the host face. Deeper lets the insert sit lower.</source>
   <translation>Tiefe der Tasche unter der Trägerfläche. Tiefer lässt die Einlage niedriger sitzen.</translation>
  </message>
  <message>
   <source>Tape or glue under the insert, pressed. More of it lifts the insert.</source>
   <translation>Klebeband oder Kleber unter der Einlage, gepresst. Mehr davon hebt die Einlage.</translation>
  </message>
  <message>
   <source>Thickness of the insert. Measure it in several places.</source>
   <translation>Dicke der Einlage. An mehreren Stellen messen.</translation>
  </message>
  <message>
   <source>{0}. Drag, or double-click to type.</source>
   <translation>{0}. Ziehen, oder doppelklicken zum Eingeben.</translation>
  </message>
  <message>
   <source>{0} proud</source>
   <translation>{0} überstehend</translation>
  </message>
  <message>
   <source>{0} below</source>
   <translation>{0} vertieft</translation>
  </message>
  <message>
   <source>{0} flush</source>
   <translation>{0} bündig</translation>
  </message>
  <message>
   <source>Proud</source>
   <translation>Überstehend</translation>
  </message>
  <message>
   <source>Flush</source>
   <translation>Bündig</translation>
  </message>
  <message>
   <source>Below</source>
   <translation>Vertieft</translation>
  </message>
  <message>
   <source>{0} floor</source>
   <translation>{0}, Grund</translation>
  </message>
  <message>
   <source>gauge ×{0}</source>
   <translation>Anzeige ×{0}</translation>
  </message>
  <message>
   <source>{0} expected</source>
   <translation>{0} erwartet</translation>
  </message>
  <message>
   <source>between {0} and {1}</source>
   <translation>zwischen {0} und {1}</translation>
  </message>
  <message>
   <source>one reading of each, no spread</source>
   <translation>je ein Messwert, keine Streuung</translation>
  </message>
 </context>
 <context>
  <name>ScatterView</name>
  <message>
   <source>Spread of many parts</source>
   <translation>Streuung vieler Teile</translation>
  </message>
 </context>
 <context>
  <name>StackView</name>
  <message>
   <source>Stack: section through the fitting, not to scale</source>
   <translation>Aufbau: Schnitt durch die Passung, nicht maßstäblich</translation>
  </message>
  <message>
   <source>{0}, {1}, between {2} and {3}. {4}. Arrow keys move the {5}.</source>
   <translation>{0}, {1}, zwischen {2} und {3}. {4}. Pfeiltasten bewegen: {5}.</translation>
  </message>
 </context>
 <context>
  <name>TurnsView</name>
  <message>
   <source>Ways to hold the plug that look alike</source>
   <translation>Lagen der Einlage, die gleich aussehen</translation>
  </message>
  <message>
   <source>as drawn</source>
   <translation>gezeichnet</translation>
  </message>
 </context>
 <context>
  <name>MainWindow</name>
  <message>
   <source>New fit</source>
   <translation>Neue Passung</translation>
  </message>
  <message>
   <source>Nothing to save</source>
   <translation>Nichts zu speichern</translation>
  </message>
  <message>
   <source>Not saved</source>
   <translation>Nicht gespeichert</translation>
  </message>
  <message>
   <source>Saved</source>
   <translation>Gespeichert</translation>
  </message>
  <message>
   <source>Not changed</source>
   <translation>Nicht geändert</translation>
  </message>
  <message>
   <source>Nothing yet</source>
   <translation>Noch nichts</translation>
  </message>
 </context>
 <context>
  <name>when</name>
  <message>
   <source>today at {0}</source>
   <translation>heute um {0}</translation>
  </message>
  <message>
   <source>yesterday</source>
   <translation>gestern</translation>
  </message>
 </context>
 <context>
  <name>WorkPage</name>
  <message>
   <source>Spot</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <source>Checks</source>
   <translation>Prüfungen</translation>
  </message>
  <message>
   <source>Outlines</source>
   <translation>Umrisse</translation>
  </message>
  <message>
   <source>Workshop</source>
   <translation>Werkstatt</translation>
  </message>
  <message>
   <source>Looking for the seat of the plug</source>
   <translation>Der Sitz der Einlage wird gesucht</translation>
  </message>
  <message>
   <source>1 check open</source>
   <translation>1 Prüfung offen</translation>
  </message>
  <message>
   <source>{0} checks open</source>
   <translation>{0} Prüfungen offen</translation>
  </message>
  <message>
   <source>No checks open</source>
   <translation>Keine Prüfung offen</translation>
  </message>
  <message>
   <source>{0} blocks</source>
   <translation>{0} sperrt</translation>
  </message>
  <message>
   <source>{0} to look at</source>
   <translation>{0} anzusehen</translation>
  </message>
  <message>
   <source>1 note</source>
   <translation>1 Hinweis</translation>
  </message>
  <message>
   <source>{0} notes</source>
   <translation>{0} Hinweise</translation>
  </message>
  <message>
   <source>Tightest {0}</source>
   <translation>Engste Stelle {0}</translation>
  </message>
 </context>
 <context>
  <name>settings</name>
  <message>
   <source>Lengths</source>
   <translation>Längen</translation>
  </message>
  <message>
   <source>Unit of new work</source>
   <translation>Einheit neuer Arbeit</translation>
  </message>
  <message>
   <source>Lengths are shown in it, and a bare number you type has it. An open document keeps its own.</source>
   <translation>Längen werden darin gezeigt, und eine bloße Zahl hat sie. Eine offene Arbeit behält ihre eigene.</translation>
  </message>
  <message>
   <source>millimetres</source>
   <translation>Millimeter</translation>
  </message>
  <message>
   <source>inches</source>
   <translation>Zoll</translation>
  </message>
  <message>
   <source>thousandths of an inch</source>
   <translation>Tausendstel Zoll</translation>
  </message>
  <message>
   <source>New fits</source>
   <translation>Neue Passungen</translation>
  </message>
  <message>
   <source>Clearance per side</source>
   <translation>Spiel je Seite</translation>
  </message>
  <message>
   <source>Where a new fit starts. Your own trials tell you better.</source>
   <translation>Womit eine neue Passung beginnt. Ihre eigenen Versuche wissen es besser.</translation>
  </message>
  <message>
   <source>Pocket cutter</source>
   <translation>Fräser der Tasche</translation>
  </message>
  <message>
   <source>Measured diameter. An error here costs its full amount per side.</source>
   <translation>Gemessener Durchmesser. Ein Fehler geht je Seite voll ein.</translation>
  </message>
  <message>
   <source>Plug cutter</source>
   <translation>Fräser der Einlage</translation>
  </message>
  <message>
   <source>Finishing allowance</source>
   <translation>Schlichtaufmaß</translation>
  </message>
  <message>
   <source>Stock that roughing leaves on the wall for the finishing pass; 0 for no roughing outline.</source>
   <translation>Was das Schruppen an der Wand für den Schlichtgang lässt; 0 für keinen Schruppumriss.</translation>
  </message>
  <message>
   <source>Reading drawings</source>
   <translation>Zeichnungen lesen</translation>
  </message>
  <message>
   <source>Join ends closer than</source>
   <translation>Enden verbinden unter</translation>
  </message>
  <message>
   <source>Line ends this close count as one point. Each joint made is listed in the notes.</source>
   <translation>So nahe Linienenden gelten als ein Punkt. Jede Verbindung steht in den Hinweisen.</translation>
  </message>
  <message>
   <source>Painted lines are areas</source>
   <translation>Gemalte Linien sind Flächen</translation>
  </message>
  <message>
   <source>Reads a thick painted line as the area it covers, not as its middle line.</source>
   <translation>Liest eine dick gemalte Linie als die Fläche, die sie deckt, nicht als ihre Mitte.</translation>
  </message>
  <message>
   <source>Window</source>
   <translation>Fenster</translation>
  </message>
  <message>
   <source>Colours</source>
   <translation>Farben</translation>
  </message>
  <message>
   <source>Light for a bright bench, dark for a dim one, high contrast for tired eyes.</source>
   <translation>Hell für eine helle Werkbank, dunkel für eine dunkle, hoher Kontrast für müde Augen.</translation>
  </message>
  <message>
   <source>as the system</source>
   <translation>wie das System</translation>
  </message>
  <message>
   <source>light</source>
   <translation>hell</translation>
  </message>
  <message>
   <source>dark</source>
   <translation>dunkel</translation>
  </message>
  <message>
   <source>high contrast</source>
   <translation>hoher Kontrast</translation>
  </message>
  <message>
   <source>Mouse wheel</source>
   <translation>Mausrad</translation>
  </message>
  <message>
   <source>Turning it zooms about the pointer or scrolls. With Ctrl it always zooms.</source>
   <translation>Drehen zoomt um den Zeiger oder rollt. Mit Strg zoomt es immer.</translation>
  </message>
  <message>
   <source>zooms</source>
   <translation>zoomt</translation>
  </message>
  <message>
   <source>scrolls</source>
   <translation>rollt</translation>
  </message>
  <message>
   <source>Language</source>
   <translation>Sprache</translation>
  </message>
  <message>
   <source>Takes effect when the window is opened again.</source>
   <translation>Gilt, sobald das Fenster neu geöffnet wird.</translation>
  </message>
  <message>
   <source>English</source>
   <translation>English</translation>
  </message>
  <message>
   <source>Deutsch</source>
   <translation>Deutsch</translation>
  </message>
 </context>
</TS>
