<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
 <context>
  <name>bench</name>
  <message>
   <source>No recovery copy is kept ({0}); save your work often.</source>
   <translation>Es wird keine Sicherungskopie geführt ({0}); speichern Sie oft.</translation>
  </message>
 </context>
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
   <source>Keeps outlines and fits in one file.</source>
   <translation>Behält Umrisse und Passungen in einer Datei.</translation>
  </message>
  <message>
   <source>Save &amp;project as…</source>
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
   <source>S&amp;ettings…</source>
   <translation>&amp;Einstellungen…</translation>
  </message>
  <message>
   <source>Units, new fits, colours.</source>
   <translation>Einheiten, neue Passungen, Farben.</translation>
  </message>
  <message>
   <source>&amp;Quit</source>
   <translation>Bee&amp;nden</translation>
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
   <source>Next p&amp;anel</source>
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
   <translation>Zeigt Längen in 0.001 Zoll.</translation>
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
   <source>&amp;High contrast, black</source>
   <translation>Hoher &amp;Kontrast, schwarz</translation>
  </message>
  <message>
   <source>Strong outlines on black.</source>
   <translation>Kräftige Linien auf Schwarz.</translation>
  </message>
  <message>
   <source>High contrast, &amp;white</source>
   <translation>Hoher Kontrast, &amp;weiß</translation>
  </message>
  <message>
   <source>Strong outlines on white.</source>
   <translation>Kräftige Linien auf Weiß.</translation>
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
   <translation>Einlage &amp;aus Zeichnung…</translation>
  </message>
  <message>
   <source>For two made halves: reads the outline of the plug.</source>
   <translation>Für zwei gefertigte Hälften: liest den Umriss der Einlage.</translation>
  </message>
  <message>
   <source>Pocket &amp;as measured…</source>
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
  <name>core</name>
  <message>
   <source>{plug}, {plug_state} with {plug_cutter}, into {pocket}, {pocket_state} with {pocket_cutter}, {feel} at {clearance} per side ({overall} overall), corners {corners}, {allowance}, {seat} on {glue}, {facing}.</source>
   <translation>{plug}, {plug_state} mit {plug_cutter}, in {pocket}, {pocket_state} mit {pocket_cutter}, bei {clearance} je Seite ({overall} gesamt) {feel}, Ecken {corners}, {allowance}, auf {glue} {seat}, {facing}.</translation>
  </message>
  <message>
   <source>{0} {1}</source>
   <translation>{0}-{1}</translation>
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
   <source>{0}, stays</source>
   <translation>{0}, bleibt</translation>
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
   <source>no glue</source>
   <translation>bloßem Grund</translation>
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
   <translation>Kirschholz</translation>
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
   <source>1,000</source>
   <translation>1 000</translation>
  </message>
  <message>
   <source>Unit of new work</source>
   <translation>Einheit neuer Arbeit</translation>
  </message>
  <message>
   <source>Clearance per side</source>
   <translation>Spiel je Seite</translation>
  </message>
  <message>
   <source>Pocket cutter</source>
   <translation>Fräser der Tasche</translation>
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
   <source>Cutter known to ±</source>
   <translation>Fräser bekannt auf ±</translation>
  </message>
  <message>
   <source>Runout</source>
   <translation>Rundlauf</translation>
  </message>
  <message>
   <source>A width repeats to ±</source>
   <translation>Eine Breite wiederholt sich auf ±</translation>
  </message>
  <message>
   <source>Thickness varies by ±</source>
   <translation>Dicke schwankt um ±</translation>
  </message>
  <message>
   <source>Join ends closer than</source>
   <translation>Enden verbinden unter</translation>
  </message>
  <message>
   <source>Painted lines are areas</source>
   <translation>Gemalte Linien sind Flächen</translation>
  </message>
  <message>
   <source>Colours</source>
   <translation>Farben</translation>
  </message>
  <message>
   <source>Mouse wheel</source>
   <translation>Mausrad</translation>
  </message>
  <message>
   <source>Language</source>
   <translation>Sprache</translation>
  </message>
  <message>
   <source>Nothing is said of many parts until then.</source>
   <translation>Vorher lässt sich nichts über viele Teile sagen.</translation>
  </message>
  <message>
   <source>“{name}” could not be read; check its name, its folder and its permissions.</source>
   <translation>„{name}“ ließ sich nicht lesen; prüfen Sie Namen, Ordner und Zugriffsrechte.</translation>
  </message>
  <message>
   <source>Nothing is chosen; choose the pocket before its plug.</source>
   <translation>Nichts ist gewählt; wählen Sie erst die Tasche, dann ihre Einlage.</translation>
  </message>
  <message>
   <source>flipped</source>
   <translation>gewendet</translation>
  </message>
  <message>
   <source>A contour without area runs neither way round; remove it.</source>
   <translation>Ein Umriss ohne Fläche hat keinen Umlaufsinn; entfernen Sie ihn.</translation>
  </message>
  <message>
   <source>A depth of cut is not a finite number; type a length such as 1 mm.</source>
   <translation>Eine Schnitttiefe ist keine endliche Zahl; geben Sie eine Länge wie 1 mm ein.</translation>
  </message>
  <message>
   <source>A depth and a depth per pass are more than 0; give both.</source>
   <translation>Die Tiefe und die Tiefe je Durchgang sind mehr als 0; geben Sie beide an.</translation>
  </message>
  <message>
   <source>A floor allowance is 0 or more and less than the depth; give 0 for none.</source>
   <translation>Ein Aufmaß am Grund ist mindestens 0 und kleiner als die Tiefe; geben Sie 0 für keines ein.</translation>
  </message>
  <message>
   <source>The floor allowance is more than one pass takes; make it smaller.</source>
   <translation>Das Aufmaß am Grund ist mehr, als ein Durchgang nimmt; machen Sie es kleiner.</translation>
  </message>
  <message>
   <source>That depth takes more than {most} passes; check the depth per pass.</source>
   <translation>Diese Tiefe braucht mehr als {most} Durchgänge; prüfen Sie die Tiefe je Durchgang.</translation>
  </message>
  <message>
   <source>Cutting speed, diameter, teeth and chip are more than 0; check the numbers.</source>
   <translation>Schnittgeschwindigkeit, Durchmesser, Zähnezahl und Vorschub je Zahn sind mehr als 0; prüfen Sie die Zahlen.</translation>
  </message>
  <message>
   <source>A hole “{zone}” is not in the table here; use H or JS, such as H7.</source>
   <translation>Eine Bohrung „{zone}“ steht hier nicht in der Tabelle; nehmen Sie H oder JS, etwa H7.</translation>
  </message>
  <message>
   <source>A shaft “{zone}” is not in the table here; use c d e f g h js k m n p s or u, such as g6.</source>
   <translation>Eine Welle „{zone}“ steht hier nicht in der Tabelle; nehmen Sie c d e f g h js k m n p s oder u, etwa g6.</translation>
  </message>
  <message>
   <source>“{fit}” is not a fit; write a hole and a shaft, such as H7/g6.</source>
   <translation>„{fit}“ ist keine Passung; schreiben Sie Bohrung und Welle, etwa H7/g6.</translation>
  </message>
  <message>
   <source>Grade IT{grade} is not in the table here; use IT5 to IT14.</source>
   <translation>Der Grundtoleranzgrad IT{grade} steht hier nicht in der Tabelle; nehmen Sie IT5 bis IT14.</translation>
  </message>
  <message>
   <source>“{zone}” is not a tolerance zone; write a letter and a grade, such as H7.</source>
   <translation>„{zone}“ ist kein Toleranzfeld; schreiben Sie einen Buchstaben und einen Grad, etwa H7.</translation>
  </message>
  <message>
   <source>A size of {size} mm is outside the table, which runs up to {largest} mm; check it and its unit.</source>
   <translation>Ein Maß von {size} mm liegt außerhalb der Tabelle, die bis {largest} mm reicht; prüfen Sie es und seine Einheit.</translation>
  </message>
  <message>
   <source>Tape or glue has a thickness of 0 or more; give it without its liner.</source>
   <translation>Klebeband oder Kleber ist mindestens 0 dick; geben Sie die Dicke ohne Schutzfolie an.</translation>
  </message>
  <message>
   <source>Tape is squeezed by 0 to 99 % of its thickness; check the share.</source>
   <translation>Klebeband wird um 0 bis 99 % seiner Dicke gepresst; prüfen Sie den Anteil.</translation>
  </message>
  <message>
   <source>A fillet, an edge break or a clearance is not a finite number; type a length in mm.</source>
   <translation>Ein Kehlradius, ein Kantenbruch oder ein Spiel ist keine endliche Zahl; geben Sie eine Länge in mm ein.</translation>
  </message>
  <message>
   <source>A fillet radius and an edge break are 0 or more; give 0 for a sharp edge.</source>
   <translation>Kehlradius und Kantenbruch sind mindestens 0; geben Sie 0 für eine scharfe Kante ein.</translation>
  </message>
  <message>
   <source>A height of the stack is not a finite number; type a length such as 3.05 mm.</source>
   <translation>Eine Höhe des Aufbaus ist keine endliche Zahl; geben Sie eine Länge wie 3.05 mm ein.</translation>
  </message>
  <message>
   <source>The readings of a height are out of order; give smallest, expected and largest so.</source>
   <translation>Die Messwerte einer Höhe stehen nicht in der richtigen Reihenfolge; geben Sie erst den kleinsten, dann den erwarteten, dann den größten an.</translation>
  </message>
  <message>
   <source>A height of the stack has no reading; measure it at one place or more.</source>
   <translation>Eine Höhe des Aufbaus hat keinen Messwert; messen Sie an mindestens einer Stelle.</translation>
  </message>
  <message>
   <source>A plug's thickness and a pocket's depth are more than 0; check the readings.</source>
   <translation>Die Dicke einer Einlage und die Tiefe einer Tasche sind mehr als 0; prüfen Sie die Messwerte.</translation>
  </message>
  <message>
   <source>Tape or glue has no negative thickness; give 0 for none.</source>
   <translation>Klebeband oder Kleber hat keine negative Dicke; geben Sie 0 für keines ein.</translation>
  </message>
  <message>
   <source>A floor fillet holds the plug up by 0 or more; check the number.</source>
   <translation>Eine Kehle am Grund hält die Einlage um mindestens 0 hoch; prüfen Sie die Zahl.</translation>
  </message>
  <message>
   <source>A target height is not a finite number; type a length such as 0.2 mm.</source>
   <translation>Eine Zielhöhe ist keine endliche Zahl; geben Sie eine Länge wie 0.2 mm ein.</translation>
  </message>
  <message>
   <source>A target height and its tolerance are 0 or more; the word says proud or below.</source>
   <translation>Eine Zielhöhe und ihre Toleranz sind mindestens 0; ob überstehend oder vertieft, sagt das Wort.</translation>
  </message>
  <message>
   <source>A target is flush by 0, or proud or below by more than 0; change one of the two.</source>
   <translation>Ein Ziel ist bündig mit 0, oder überstehend oder vertieft mit mehr als 0; ändern Sie eines von beiden.</translation>
  </message>
  <message>
   <source>A build-up is a length of 0 or more; give what one coated surface grows by.</source>
   <translation>Ein Auftrag ist eine Länge von mindestens 0; geben Sie an, um wie viel eine beschichtete Fläche wächst.</translation>
  </message>
  <message>
   <source>{name} was not written: {reason}; choose another folder.</source>
   <translation>{name} wurde nicht geschrieben: {reason}; wählen Sie einen anderen Ordner.</translation>
  </message>
  <message>
   <source>it is locked against writing</source>
   <translation>die Datei ist schreibgeschützt</translation>
  </message>
  <message>
   <source>it could not be written</source>
   <translation>sie ließ sich nicht schreiben</translation>
  </message>
  <message>
   <source>The coating takes {taken} of the clearance; then the plug bites by {bite}.</source>
   <translation>Die Beschichtung nimmt {taken} vom Spiel; dann klemmt die Einlage um {bite}.</translation>
  </message>
  <message>
   <source>Cut it with {needed}, or mask the walls.</source>
   <translation>Schneiden Sie mit {needed}, oder decken Sie die Wände ab.</translation>
  </message>
  <message>
   <source>Change the coating</source>
   <translation>Beschichtung ändern</translation>
  </message>
  <message>
   <source>Add it to the clearance</source>
   <translation>Zum Spiel dazugeben</translation>
  </message>
  <message>
   <source>Mask the walls, or take as much off one of them before it is coated.</source>
   <translation>Decken Sie die Wände ab, oder nehmen Sie vor dem Beschichten ebenso viel von einer ab.</translation>
  </message>
  <message>
   <source>“=”</source>
   <translation>„=“</translation>
  </message>
  <message>
   <source>letters that are not UTF-8</source>
   <translation>Zeichen, die kein UTF-8 sind,</translation>
  </message>
  <message>
   <source>A desktop cannot start a program whose path holds {what} ({where}); install it in another folder.</source>
   <translation>Der Schreibtisch kann kein Programm starten, dessen Pfad {what} enthält ({where}); installieren Sie es in einem anderen Ordner.</translation>
  </message>
  <message>
   <source>The folder {parent} was not made: {reason}; make room for it.</source>
   <translation>Der Ordner {parent} wurde nicht angelegt: {reason}; schaffen Sie Platz dafür.</translation>
  </message>
  <message>
   <source>{file} was not removed: {reason}; remove it by hand.</source>
   <translation>{file} wurde nicht entfernt: {reason}; entfernen Sie die Datei von Hand.</translation>
  </message>
  <message>
   <source>it could not be made</source>
   <translation>er ließ sich nicht anlegen</translation>
  </message>
  <message>
   <source>it could not be removed</source>
   <translation>sie ließ sich nicht entfernen</translation>
  </message>
  <message>
   <source>to cut</source>
   <translation>zu schneiden</translation>
  </message>
  <message>
   <source>already cut</source>
   <translation>geschnitten</translation>
  </message>
  <message>
   <source>finished</source>
   <translation>fertig</translation>
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
   <source>left for hand work</source>
   <translation>von Hand</translation>
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
   <source>{first} in the pocket, {second} in the plug</source>
   <translation>{first} in der Tasche, {second} in der Einlage</translation>
  </message>
  <message>
   <source>Call the {half} {name}</source>
   <translation>{half} {name} nennen</translation>
  </message>
  <message>
   <source>Show lengths in millimetres</source>
   <translation>Längen in Millimetern zeigen</translation>
  </message>
  <message>
   <source>Show lengths in inches</source>
   <translation>Längen in Zoll zeigen</translation>
  </message>
  <message>
   <source>Show lengths in thou</source>
   <translation>Längen in Thou zeigen</translation>
  </message>
  <message>
   <source>Open {name}</source>
   <translation>{name} öffnen</translation>
  </message>
  <message>
   <source>Add 1 outline</source>
   <translation>1 Umriss hinzufügen</translation>
  </message>
  <message>
   <source>Add {count} outlines</source>
   <translation>{count} Umrisse hinzufügen</translation>
  </message>
  <message>
   <source>Remove 1 outline</source>
   <translation>1 Umriss entfernen</translation>
  </message>
  <message>
   <source>Remove {count} outlines</source>
   <translation>{count} Umrisse entfernen</translation>
  </message>
  <message>
   <source>Choose {count} outlines</source>
   <translation>{count} Umrisse wählen</translation>
  </message>
  <message>
   <source>Name an outline {name}</source>
   <translation>Umriss {name} nennen</translation>
  </message>
  <message>
   <source>Set clearance to {clearance} per side</source>
   <translation>Spiel auf {clearance} je Seite setzen</translation>
  </message>
  <message>
   <source>Ask for a {feel} fit</source>
   <translation>Sitz wünschen: {feel}</translation>
  </message>
  <message>
   <source>Set {half} cutter to {cutter}</source>
   <translation>Fräser der {half} auf {cutter} setzen</translation>
  </message>
  <message>
   <source>Set {half} kerf to {kerf}</source>
   <translation>Schnittfuge der {half} auf {kerf} setzen</translation>
  </message>
  <message>
   <source>Set finishing allowance to {allowance}</source>
   <translation>Schlichtaufmaß auf {allowance} setzen</translation>
  </message>
  <message>
   <source>Mark {half} as {state}</source>
   <translation>{half} als {state} kennzeichnen</translation>
  </message>
  <message>
   <source>Set {half} corners to {relief}</source>
   <translation>Ecken der {half}: {relief}</translation>
  </message>
  <message>
   <source>Set corners to {corners}</source>
   <translation>Ecken: {corners}</translation>
  </message>
  <message>
   <source>{relief} in the plug</source>
   <translation>{relief} in der Einlage</translation>
  </message>
  <message>
   <source>{relief} in the pocket</source>
   <translation>{relief} in der Tasche</translation>
  </message>
  <message>
   <source>Use as {half}</source>
   <translation>Als {half} nehmen</translation>
  </message>
  <message>
   <source>Change the stack</source>
   <translation>Aufbau ändern</translation>
  </message>
  <message>
   <source>Read the drawing in {unit}</source>
   <translation>Zeichnung in {unit} lesen</translation>
  </message>
  <message>
   <source>Change how the drawing is read</source>
   <translation>Zeichnung anders lesen</translation>
  </message>
  <message>
   <source>Record a {feel} trial</source>
   <translation>Versuch festhalten: {feel}</translation>
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
   <source>Choose {name}</source>
   <translation>{name} wählen</translation>
  </message>
  <message>
   <source>rounded to match</source>
   <translation>passend gerundet</translation>
  </message>
  <message>
   <source>{relief} in both</source>
   <translation>{relief} in beiden</translation>
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
   <source>Show lengths in {unit}</source>
   <translation>Längen in {unit} zeigen</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nichts</translation>
  </message>
  <message>
   <source>Nothing is left of the {half} of {name} for layer {layer}, so it is in no file.</source>
   <translation>Von der {half} von {name} bleibt für Ebene {layer} nichts übrig, sie steht also in keiner Datei.</translation>
  </message>
  <message>
   <source>Use a smaller cutter, allowance, kerf or clearance.</source>
   <translation>Nehmen Sie kleinere Werte für Fräser, Aufmaß, Schnittfuge oder Spiel.</translation>
  </message>
  <message>
   <source>There is no fitting to write; choose at least one outline.</source>
   <translation>Es gibt keine Passung zu schreiben; wählen Sie mindestens einen Umriss.</translation>
  </message>
  <message>
   <source>DXF R12 cannot say what its unit is; these files are in millimetres.</source>
   <translation>DXF R12 kann seine Einheit nicht nennen; diese Dateien sind in Millimetern.</translation>
  </message>
  <message>
   <source>Choose millimetres where the file is opened, or export as R2000.</source>
   <translation>Wählen Sie Millimeter, wo die Datei geöffnet wird, oder schreiben Sie R2000.</translation>
  </message>
  <message>
   <source>The {half} is cut by a beam or blade of unknown kerf ({outlines}), so its line lies on the edge.</source>
   <translation>Die {half} wird von Strahl oder Klinge mit unbekannter Schnittfuge geschnitten ({outlines}), ihre Linie liegt also auf der Kante.</translation>
  </message>
  <message>
   <source>Give the measured width of the cut.</source>
   <translation>Geben Sie die gemessene Breite des Schnitts an.</translation>
  </message>
  <message>
   <source>The {half} is written as a mirror image, for cutting face down.</source>
   <translation>Die {half} wird als Spiegelbild geschrieben, zum Schneiden mit der Sichtseite nach unten.</translation>
  </message>
  <message>
   <source>Turn the stock face down, or export it without mirroring.</source>
   <translation>Legen Sie den Werkstoff mit der Sichtseite nach unten, oder schreiben Sie ungespiegelt.</translation>
  </message>
  <message>
   <source>Choose among {layers}.</source>
   <translation>Wählen Sie unter {layers}.</translation>
  </message>
  <message>
   <source>Every outline lies on a layer that is hidden or looks like construction; these were used.</source>
   <translation>Jeder Umriss liegt auf einer Ebene, die verborgen ist oder nach Hilfslinien aussieht; diese wurden genommen.</translation>
  </message>
  <message>
   <source>“{name}” holds no closed outline; draw the edge of the pocket as a closed line.</source>
   <translation>„{name}“ enthält keinen geschlossenen Umriss; zeichnen Sie den Rand der Tasche als geschlossene Linie.</translation>
  </message>
  <message>
   <source>Reading the file</source>
   <translation>Die Datei wird gelesen</translation>
  </message>
  <message>
   <source>Finding the outlines</source>
   <translation>Die Umrisse werden gesucht</translation>
  </message>
  <message>
   <source>Checking the outlines</source>
   <translation>Die Umrisse werden geprüft</translation>
  </message>
  <message>
   <source>Check that these are the lines you want to cut.</source>
   <translation>Prüfen Sie, ob das die Linien sind, die Sie schneiden wollen.</translation>
  </message>
  <message>
   <source>“{name}” holds no closed outline, only {lines}: {first} {remedy}</source>
   <translation>„{name}“ enthält keinen geschlossenen Umriss, nur {lines}: {first} {remedy}</translation>
  </message>
  <message>
   <source>“{name}” holds nothing on the chosen layers; choose among {layers}.</source>
   <translation>„{name}“ enthält nichts auf den gewählten Ebenen; wählen Sie unter {layers}.</translation>
  </message>
  <message>
   <source>“{name}” holds no closed outline: {message} {remedy}</source>
   <translation>„{name}“ enthält keinen geschlossenen Umriss: {message} {remedy}</translation>
  </message>
  <message>
   <source>{name} lies exactly on another at {place}; the two count once.</source>
   <translation>{name} liegt bei {place} genau auf einem anderen; beide zählen einmal.</translation>
  </message>
  <message>
   <source>There is no layer “{name}” in it.</source>
   <translation>Es gibt darin keine Ebene „{name}“.</translation>
  </message>
  <message>
   <source>a line is open at {place}: the nearest loose end is {away} away.</source>
   <translation>Eine Linie ist bei {place} offen; das nächste lose Ende ist {away} entfernt.</translation>
  </message>
  <message>
   <source>Nothing to do.</source>
   <translation>Nichts zu tun.</translation>
  </message>
  <message>
   <source>1 open line</source>
   <translation>1 offene Linie</translation>
  </message>
  <message>
   <source>{count} open lines</source>
   <translation>{count} offene Linien</translation>
  </message>
  <message>
   <source>The recovery folder is in use; close other windows and try again.</source>
   <translation>Der Ordner für Wiederherstellung ist in Gebrauch; schließen Sie andere Fenster und versuchen Sie es noch einmal.</translation>
  </message>
  <message>
   <source>An outline</source>
   <translation>Ein Umriss</translation>
  </message>
  <message>
   <source>Nothing to do, unless the shape changed: then close it in the drawing program.</source>
   <translation>Nichts zu tun, außer die Form hat sich geändert: Dann schließen Sie sie im Zeichenprogramm.</translation>
  </message>
  <message>
   <source>{count} gaps were closed, the widest {gap} at {place}.</source>
   <translation>{count} Lücken wurden geschlossen, die breiteste {gap} bei {place}.</translation>
  </message>
  <message>
   <source>The outline “{name}”</source>
   <translation>Der Umriss „{name}“</translation>
  </message>
  <message>
   <source>An outline on layer “{layer}”</source>
   <translation>Ein Umriss auf Ebene „{layer}“</translation>
  </message>
  <message>
   <source>Lines{on_layer} meet in threes or cross at {places}{where}; they were cut there into {areas}.</source>
   <translation>Linien{on_layer} treffen zu dritt zusammen oder kreuzen sich an {places}{where}; dort wurden sie in {areas} geteilt.</translation>
  </message>
  <message>
   <source>Check that each area is one you want; leave the others out.</source>
   <translation>Prüfen Sie, ob Sie jede Fläche wollen; lassen Sie die anderen weg.</translation>
  </message>
  <message>
   <source> on layer “{layer}”</source>
   <translation> auf Ebene „{layer}“</translation>
  </message>
  <message>
   <source>A line is open at {place}: the nearest loose end is {away} away.</source>
   <translation>Eine Linie ist bei {place} offen; das nächste lose Ende ist {away} entfernt.</translation>
  </message>
  <message>
   <source>Close it in the drawing program, or allow a wider gap if its ends belong together.</source>
   <translation>Schließen Sie sie im Zeichenprogramm, oder lassen Sie eine breitere Lücke zu, wenn die Enden zusammengehören.</translation>
  </message>
  <message>
   <source>, first at {place}</source>
   <translation>, zuerst bei {place}</translation>
  </message>
  <message>
   <source>A line{on_layer} runs across an outline with both ends free; it was left out.</source>
   <translation>Eine Linie{on_layer} läuft mit beiden Enden frei über einen Umriss; sie wurde weggelassen.</translation>
  </message>
  <message>
   <source>Delete it, or end it on the outline if it should part it.</source>
   <translation>Löschen Sie sie, oder lassen Sie sie auf dem Umriss enden, wenn sie ihn teilen soll.</translation>
  </message>
  <message>
   <source>The linework{on_layer}</source>
   <translation>Das Liniengewirr{on_layer}</translation>
  </message>
  <message>
   <source>1 outline lies exactly on others and counted once.</source>
   <translation>1 Umriss liegt genau auf einem anderen und zählt einmal.</translation>
  </message>
  <message>
   <source>{count} outlines lie exactly on others and counted once.</source>
   <translation>{count} Umrisse liegen genau auf anderen und zählen einmal.</translation>
  </message>
  <message>
   <source>1 line that lay on others counted once.</source>
   <translation>1 Linie, die auf einer anderen lag, zählt einmal.</translation>
  </message>
  <message>
   <source>{count} lines that lay on others counted once.</source>
   <translation>{count} Linien, die auf anderen lagen, zählen einmal.</translation>
  </message>
  <message>
   <source>A gap of {gap} at {place} was closed.</source>
   <translation>Eine Lücke von {gap} bei {place} wurde geschlossen.</translation>
  </message>
  <message>
   <source>The same again at 1 more place.</source>
   <translation>Dasselbe noch an 1 weiteren Stelle.</translation>
  </message>
  <message>
   <source>The same again at {more} more places.</source>
   <translation>Dasselbe noch an {more} weiteren Stellen.</translation>
  </message>
  <message>
   <source>1 place</source>
   <translation>1 Stelle</translation>
  </message>
  <message>
   <source>{count} places</source>
   <translation>{count} Stellen</translation>
  </message>
  <message>
   <source>1 area</source>
   <translation>1 Fläche</translation>
  </message>
  <message>
   <source>{count} areas</source>
   <translation>{count} Flächen</translation>
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
   <source>Take {name} for the plug</source>
   <translation>{name} als Einlage nehmen</translation>
  </message>
  <message>
   <source>pasted outlines</source>
   <translation>eingefügte Umrisse</translation>
  </message>
  <message>
   <source>Take the plug from {name}</source>
   <translation>Die Einlage aus {name} nehmen</translation>
  </message>
  <message>
   <source>Lay the plug {seating}</source>
   <translation>Die Einlage {seating} legen</translation>
  </message>
  <message>
   <source>Change the workshop's numbers</source>
   <translation>Die Zahlen der Werkstatt ändern</translation>
  </message>
  <message>
   <source>Set the kerf's taper to {taper}</source>
   <translation>Schräge der Schnittfuge auf {taper} setzen</translation>
  </message>
  <message>
   <source>Break the pocket's rim by {width}</source>
   <translation>Rand der Tasche um {width} brechen</translation>
  </message>
  <message>
   <source>An outline cannot be the plug of itself; choose another one.</source>
   <translation>Ein Umriss kann nicht seine eigene Einlage sein; wählen Sie einen anderen.</translation>
  </message>
  <message>
   <source>There is no such outline any more; choose another one.</source>
   <translation>Diesen Umriss gibt es nicht mehr; wählen Sie einen anderen.</translation>
  </message>
  <message>
   <source>Break the plug's lower edge by {width}</source>
   <translation>Unterkante der Einlage um {width} brechen</translation>
  </message>
  <message>
   <source>The search for the seat was stopped; search again, or leave the plug as it is drawn.</source>
   <translation>Die Suche nach dem Sitz wurde angehalten; suchen Sie noch einmal, oder lassen Sie die Einlage, wie sie gezeichnet ist.</translation>
  </message>
  <message>
   <source>diameter</source>
   <translation>Durchmesser</translation>
  </message>
  <message>
   <source>width</source>
   <translation>Breite</translation>
  </message>
  <message>
   <source>height</source>
   <translation>Höhe</translation>
  </message>
  <message>
   <source>length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>A corner radius of {radius} does not fit a rectangle of {size}; give at most {most}.</source>
   <translation>Ein Eckenradius von {radius} passt nicht in ein Rechteck von {size}; geben Sie höchstens {most} an.</translation>
  </message>
  <message>
   <source>A slot {long} long over all cannot be {wide} wide; swap the two.</source>
   <translation>Ein Langloch, das über alles {long} lang ist, kann nicht {wide} breit sein; vertauschen Sie die beiden.</translation>
  </message>
  <message>
   <source>The {what} must be more than 0; type a length such as 12 mm.</source>
   <translation>Der Wert „{what}“ muss mehr als 0 sein; geben Sie eine Länge wie 12 mm ein.</translation>
  </message>
  <message>
   <source>Add a {shape} by its size</source>
   <translation>{shape} nach Maß hinzufügen</translation>
  </message>
  <message>
   <source>Fit the pocket as measured</source>
   <translation>In die Tasche einpassen, wie sie gemessen ist</translation>
  </message>
  <message>
   <source>Fit the pocket as drawn</source>
   <translation>In die Tasche einpassen, wie sie gezeichnet ist</translation>
  </message>
  <message>
   <source>Readings belong to one pocket; choose the outline of that pocket alone.</source>
   <translation>Messwerte gehören zu einer einzigen Tasche; wählen Sie nur den Umriss dieser Tasche.</translation>
  </message>
  <message>
   <source>{name} at {place} lies wholly inside {other} and cannot be seen.</source>
   <translation>{name} bei {place} liegt ganz in {other} und ist nicht zu sehen.</translation>
  </message>
  <message>
   <source>Subtract it in the drawing program if it is a hole, or put it on its own layer if it is a part.</source>
   <translation>Ziehen Sie ihn im Zeichenprogramm ab, wenn er ein Loch ist, oder legen Sie ihn auf eine eigene Ebene, wenn er ein Teil ist.</translation>
  </message>
  <message>
   <source>“{name}”</source>
   <translation>„{name}“</translation>
  </message>
  <message>
   <source>another filled shape</source>
   <translation>einer anderen gefüllten Form</translation>
  </message>
  <message>
   <source>{name} covers no area; it was left out.</source>
   <translation>{name} bedeckt keine Fläche; er wurde weggelassen.</translation>
  </message>
  <message>
   <source>Delete it, or draw it again if something is missing.</source>
   <translation>Löschen Sie ihn, oder zeichnen Sie ihn neu, wenn etwas fehlt.</translation>
  </message>
  <message>
   <source>They may be exchanged; name both outlines of each if you want other pairs.</source>
   <translation>Sie lassen sich vertauschen; nennen Sie von jedem Paar beide Umrisse, wenn Sie andere Paare wollen.</translation>
  </message>
  <message>
   <source>There is no pocket for {count} plugs ({ids}), so nothing is said about them.</source>
   <translation>Zu {count} Einlagen ({ids}) gibt es keine Tasche, also wird über sie nichts gesagt.</translation>
  </message>
  <message>
   <source>Those that are alike are paired by where they lie (pocket + plug): {names}.</source>
   <translation>Was gleich ist, wurde nach seiner Lage gepaart (Tasche + Einlage): {names}.</translation>
  </message>
  <message>
   <source>Those that are alike are paired by their order, from the top left (pocket + plug): {names}.</source>
   <translation>Was gleich ist, wurde nach der Reihenfolge gepaart, von oben links an (Tasche + Einlage): {names}.</translation>
  </message>
  <message>
   <source>There is no plug for pocket {ids}, so nothing is said about it.</source>
   <translation>Zur Tasche {ids} gibt es keine Einlage, also wird über sie nichts gesagt.</translation>
  </message>
  <message>
   <source>There is no pocket for plug {ids}, so nothing is said about it.</source>
   <translation>Zur Einlage {ids} gibt es keine Tasche, also wird über sie nichts gesagt.</translation>
  </message>
  <message>
   <source>There is no plug for {count} pockets ({ids}), so nothing is said about them.</source>
   <translation>Zu {count} Taschen ({ids}) gibt es keine Einlage, also wird über sie nichts gesagt.</translation>
  </message>
  <message>
   <source>None of the plugs fits any of the pockets as far as it may move; choose the pocket and the plug that belong together.</source>
   <translation>Keine der Einlagen passt in eine der Taschen, soweit sie sich bewegen darf; wählen Sie Tasche und Einlage, die zusammengehören.</translation>
  </message>
  <message>
   <source>Other pairs would fit as well as these (pocket + plug): {names}.</source>
   <translation>Andere Paare würden ebenso gut passen wie diese (Tasche + Einlage): {names}.</translation>
  </message>
  <message>
   <source>Check these pairs, or name both outlines of each.</source>
   <translation>Prüfen Sie diese Paare, oder nennen Sie von jedem beide Umrisse.</translation>
  </message>
  <message>
   <source>Draw the {other} too, or choose the outlines that belong together.</source>
   <translation>Zeichnen Sie auch die {other}, oder wählen Sie die Umrisse, die zusammengehören.</translation>
  </message>
  <message>
   <source>Only turned would go in (pocket + plug): {names}.</source>
   <translation>Nur gedreht gingen hinein (Tasche + Einlage): {names}.</translation>
  </message>
  <message>
   <source>Seat the plugs with a turn too, or turn the drawing.</source>
   <translation>Legen Sie die Einlagen auch mit Drehung ein, oder drehen Sie die Zeichnung.</translation>
  </message>
  <message>
   <source>Only flipped over would go in (pocket + plug): {names}.</source>
   <translation>Nur gewendet gingen hinein (Tasche + Einlage): {names}.</translation>
  </message>
  <message>
   <source>Mirror the drawing if it shows the plug from below; else it is for the other hand.</source>
   <translation>Spiegeln Sie die Zeichnung, wenn sie die Einlage von unten zeigt; sonst ist sie für die andere Hand.</translation>
  </message>
  <message>
   <source>A pocket has {count} readings; keep the {most} that tell the most.</source>
   <translation>Eine Tasche hat {count} Messwerte; behalten Sie die {most} aussagekräftigsten.</translation>
  </message>
  <message>
   <source>it ends in the middle, or was changed</source>
   <translation>sie endet mittendrin oder wurde verändert</translation>
  </message>
  <message>
   <source>{name} is not a project file; open drawings as DXF or SVG.</source>
   <translation>{name} ist keine Projektdatei; öffnen Sie Zeichnungen als DXF oder SVG.</translation>
  </message>
  <message>
   <source>{name} is too large to be a project file; choose a .inlayfit file.</source>
   <translation>{name} ist zu groß für eine Projektdatei; wählen Sie eine .inlayfit-Datei.</translation>
  </message>
  <message>
   <source>{name} does not say which version it is; restore an earlier copy.</source>
   <translation>{name} sagt nicht, welche Version es ist; holen Sie eine frühere Kopie zurück.</translation>
  </message>
  <message>
   <source>{name} was saved by a newer version of Inlayfit; update Inlayfit to open it.</source>
   <translation>{name} wurde von einer neueren Version von Inlayfit gespeichert; bringen Sie Inlayfit auf den neuen Stand, um es zu öffnen.</translation>
  </message>
  <message>
   <source>{name} is damaged: {error}; restore an earlier copy.</source>
   <translation>{name} ist beschädigt: {error}; holen Sie eine frühere Kopie zurück.</translation>
  </message>
  <message>
   <source>{name} is too large to be a project file.</source>
   <translation>{name} ist zu groß für eine Projektdatei.</translation>
  </message>
  <message>
   <source>{name} was not opened: {reason}; choose another file.</source>
   <translation>{name} wurde nicht geöffnet: {reason}; wählen Sie eine andere Datei.</translation>
  </message>
  <message>
   <source>it cannot be read</source>
   <translation>die Datei ist nicht lesbar</translation>
  </message>
  <message>
   <source>is empty</source>
   <translation>ist leer</translation>
  </message>
  <message>
   <source>enclose nothing</source>
   <translation>umschließen nichts</translation>
  </message>
  <message>
   <source>must be one positive number a point</source>
   <translation>muss eine positive Zahl je Punkt sein</translation>
  </message>
  <message>
   <source>must be two numbers</source>
   <translation>müssen zwei Zahlen sein</translation>
  </message>
  <message>
   <source>{place} is not a record</source>
   <translation>{place} ist kein Datensatz</translation>
  </message>
  <message>
   <source>is not a text</source>
   <translation>ist kein Text</translation>
  </message>
  <message>
   <source>is neither true nor false</source>
   <translation>ist weder wahr noch falsch</translation>
  </message>
  <message>
   <source>is not a whole number</source>
   <translation>ist keine ganze Zahl</translation>
  </message>
  <message>
   <source>must be texts</source>
   <translation>müssen Texte sein</translation>
  </message>
  <message>
   <source>are not points</source>
   <translation>sind keine Punkte</translation>
  </message>
  <message>
   <source>lie too far out</source>
   <translation>liegen zu weit draußen</translation>
  </message>
  <message>
   <source>is not a record</source>
   <translation>ist kein Datensatz</translation>
  </message>
  <message>
   <source>name a segment that is not there</source>
   <translation>nennen eine Strecke, die es nicht gibt</translation>
  </message>
  <message>
   <source>is not a number that makes sense</source>
   <translation>ist keine sinnvolle Zahl</translation>
  </message>
  <message>
   <source>is not a list</source>
   <translation>ist keine Liste</translation>
  </message>
  <message>
   <source>is missing</source>
   <translation>fehlt</translation>
  </message>
  <message>
   <source>is not a word known here</source>
   <translation>ist kein Wort, das hier bekannt ist</translation>
  </message>
  <message>
   <source>the file</source>
   <translation>die Datei</translation>
  </message>
  <message>
   <source>The drawing states no unit; {symbol} was chosen for its folder before.</source>
   <translation>Die Zeichnung nennt keine Einheit; für ihren Ordner wurde früher {symbol} gewählt.</translation>
  </message>
  <message>
   <source>Choose the unit again if its size is wrong.</source>
   <translation>Wählen Sie die Einheit neu, wenn die Größe nicht stimmt.</translation>
  </message>
  <message>
   <source>Choose the plug</source>
   <translation>Einlage wählen</translation>
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
   <source>Leave it as drawn</source>
   <translation>Wie gezeichnet lassen</translation>
  </message>
  <message>
   <source>Turn it to its seat</source>
   <translation>Zum Sitz drehen</translation>
  </message>
  <message>
   <source>Break the plug's lower edge</source>
   <translation>Unterkante der Einlage brechen</translation>
  </message>
  <message>
   <source>no cutter radius</source>
   <translation>scharfem Werkzeug</translation>
  </message>
  <message>
   <source>no roughing pass</source>
   <translation>ohne Schruppgang</translation>
  </message>
  <message>
   <source>flush</source>
   <translation>bündig</translation>
  </message>
  <message>
   <source>{0} left to finish</source>
   <translation>{0} Aufmaß</translation>
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
   <source>a {0} cutter</source>
   <translation>Fräser {0}</translation>
  </message>
  <message>
   <source>a {0} kerf</source>
   <translation>Schnittfuge {0}</translation>
  </message>
  <message>
   <source>The settings in {name} cannot be read; the usual ones are used.</source>
   <translation>Die Einstellungen in {name} sind nicht lesbar; es gelten die üblichen.</translation>
  </message>
  <message>
   <source>“{label}” cannot be {value}; the usual value is used.</source>
   <translation>„{label}“ kann nicht {value} sein; es gilt der übliche Wert.</translation>
  </message>
  <message>
   <source>The plug ends {off} higher than wanted.</source>
   <translation>Die Einlage endet {off} höher als gewünscht.</translation>
  </message>
  <message>
   <source>The plug ends {off} lower than wanted.</source>
   <translation>Die Einlage endet {off} tiefer als gewünscht.</translation>
  </message>
  <message>
   <source>Cut it to that depth</source>
   <translation>Auf diese Tiefe schneiden</translation>
  </message>
  <message>
   <source>Cut the pocket {depth} deep, or take thinner tape or a thinner plug.</source>
   <translation>Schneiden Sie die Tasche {depth} tief, oder nehmen Sie dünneres Klebeband oder eine dünnere Einlage.</translation>
  </message>
  <message>
   <source>Cut the pocket {depth} deep, or take thicker tape or a thicker plug.</source>
   <translation>Schneiden Sie die Tasche {depth} tief, oder nehmen Sie dickeres Klebeband oder eine dickere Einlage.</translation>
  </message>
  <message>
   <source>Take thinner tape or a thinner plug, or change the height in the fit sentence.</source>
   <translation>Nehmen Sie dünneres Klebeband oder eine dünnere Einlage, oder ändern Sie die Höhe im Passungssatz.</translation>
  </message>
  <message>
   <source>Take thicker tape or a thicker plug, or change the height in the fit sentence.</source>
   <translation>Nehmen Sie dickeres Klebeband oder eine dickere Einlage, oder ändern Sie die Höhe im Passungssatz.</translation>
  </message>
  <message>
   <source>Nothing could be written into {place} ({reason}); choose another folder.</source>
   <translation>In {place} ließ sich nichts schreiben ({reason}); wählen Sie einen anderen Ordner.</translation>
  </message>
  <message>
   <source>You may not write into {place}; choose another folder.</source>
   <translation>Sie dürfen nicht in {place} schreiben; wählen Sie einen anderen Ordner.</translation>
  </message>
  <message>
   <source>{place} is on a disk that cannot be written to; choose another folder.</source>
   <translation>{place} liegt auf einem Datenträger, der sich nicht beschreiben lässt; wählen Sie einen anderen Ordner.</translation>
  </message>
  <message>
   <source>The disk that holds {place} is full; free some space and export again.</source>
   <translation>Der Datenträger mit {place} ist voll; schaffen Sie Platz und schreiben Sie noch einmal.</translation>
  </message>
  <message>
   <source>Your share of the disk that holds {place} is used up; free some space and try again.</source>
   <translation>Ihr Anteil am Datenträger mit {place} ist aufgebraucht; schaffen Sie Platz und versuchen Sie es noch einmal.</translation>
  </message>
  <message>
   <source>{place} is not a folder; choose a folder to write to.</source>
   <translation>{place} ist kein Ordner; wählen Sie einen Ordner zum Schreiben.</translation>
  </message>
  <message>
   <source>The name {name}… is too long; choose a shorter one.</source>
   <translation>Der Name {name}… ist zu lang; wählen Sie einen kürzeren.</translation>
  </message>
  <message>
   <source>{target} is the drawing that was opened and will not be overwritten; choose another folder to write to.</source>
   <translation>{target} ist die Zeichnung, die geöffnet wurde, und wird nicht überschrieben; wählen Sie zum Schreiben einen anderen Ordner.</translation>
  </message>
  <message>
   <source>{target} is a folder; move it or choose another folder.</source>
   <translation>{target} ist ein Ordner; verschieben Sie ihn, oder wählen Sie einen anderen.</translation>
  </message>
  <message>
   <source>Readings vary by 0 or more; give half the range of what was measured.</source>
   <translation>Messwerte schwanken um mindestens 0; geben Sie die halbe Spanne dessen an, was gemessen wurde.</translation>
  </message>
  <message>
   <source>Change the fit sentence.</source>
   <translation>Ändern Sie den Passungssatz.</translation>
  </message>
  <message>
   <source>Goes in.</source>
   <translation>Geht hinein.</translation>
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
   <source>Click an outline to fit it.</source>
   <translation>Klicken Sie einen Umriss an, um ihn einzupassen.</translation>
  </message>
  <message>
   <source>Open the outline of a pocket or a plug.</source>
   <translation>Öffnen Sie den Umriss einer Tasche oder Einlage.</translation>
  </message>
  <message>
   <source>Nothing is chosen.</source>
   <translation>Nichts ist gewählt.</translation>
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
   <source>No word on the fit yet.</source>
   <translation>Noch kein Wort zur Passung.</translation>
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
   <source>Look before cutting.</source>
   <translation>Vor dem Schneiden ansehen.</translation>
  </message>
  <message>
   <source>Has to be pressed in.</source>
   <translation>Muss eingepresst werden.</translation>
  </message>
  <message>
   <source>Will not go in as it is.</source>
   <translation>Geht so nicht hinein.</translation>
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
   <source>Tightest {0}, over {1} fittings.</source>
   <translation>Engste Stelle {0}, über {1} Passungen.</translation>
  </message>
  <message>
   <source>Depths and radii are 0 or more; give lengths such as 0.5 mm.</source>
   <translation>Tiefen und Radien sind mindestens 0; geben Sie Längen wie 0.5 mm ein.</translation>
  </message>
  <message>
   <source>no such file or directory</source>
   <translation>Datei oder Ordner fehlt</translation>
  </message>
  <message>
   <source>permission denied</source>
   <translation>der Zugriff ist verweigert</translation>
  </message>
  <message>
   <source>operation not permitted</source>
   <translation>der Vorgang ist nicht erlaubt</translation>
  </message>
  <message>
   <source>read-only file system</source>
   <translation>das Dateisystem ist schreibgeschützt</translation>
  </message>
  <message>
   <source>no space left on device</source>
   <translation>der Datenträger ist voll</translation>
  </message>
  <message>
   <source>disk quota exceeded</source>
   <translation>der eigene Anteil am Datenträger ist aufgebraucht</translation>
  </message>
  <message>
   <source>is a directory</source>
   <translation>es ist ein Ordner</translation>
  </message>
  <message>
   <source>not a directory</source>
   <translation>es ist kein Ordner</translation>
  </message>
  <message>
   <source>file name too long</source>
   <translation>der Dateiname ist zu lang</translation>
  </message>
  <message>
   <source>input/output error</source>
   <translation>Ein- oder Ausgabefehler</translation>
  </message>
  <message>
   <source>device or resource busy</source>
   <translation>das Gerät ist beschäftigt</translation>
  </message>
  <message>
   <source>That is too much for a file: remake one half, or choose another partner.</source>
   <translation>Das ist zu viel für eine Feile: Machen Sie eine Hälfte neu, oder wählen Sie einen anderen Partner.</translation>
  </message>
  <message>
   <source>File, scrape or pare {off} per side off the {half} there, or off the pocket.</source>
   <translation>Feilen, schaben oder stechen Sie dort {off} je Seite von der {half} ab, oder von der Tasche.</translation>
  </message>
  <message>
   <source>Work the spots listed, try it, and measure again; do not force it.</source>
   <translation>Bearbeiten Sie die genannten Stellen, probieren Sie, und messen Sie neu; wenden Sie keine Gewalt an.</translation>
  </message>
  <message>
   <source>At {place} the gap is {gap}, {off} per side less than wanted{along}.</source>
   <translation>Bei {place} beträgt der Spalt {gap}, {off} je Seite weniger als gewünscht{along}.</translation>
  </message>
  <message>
   <source>Neither half may be worked there: remake one, or choose another partner.</source>
   <translation>Dort darf keine Hälfte bearbeitet werden: Machen Sie eine neu, oder wählen Sie einen anderen Partner.</translation>
  </message>
  <message>
   <source>File, scrape or pare {off} per side off the {half} there.</source>
   <translation>Feilen, schaben oder stechen Sie dort {off} je Seite von der {half} ab.</translation>
  </message>
  <message>
   <source>Work the named spots first, then measure again; fit.json lists all.</source>
   <translation>Bearbeiten Sie erst die genannten Stellen, dann messen Sie neu; fit.json zählt alle auf.</translation>
  </message>
  <message>
   <source>Even at its tightest spot the fit is {spare} looser than wanted.</source>
   <translation>Selbst an ihrer engsten Stelle ist die Passung {spare} loser als gewünscht.</translation>
  </message>
  <message>
   <source>Shim each wall by {spare}, remake the plug, or choose another partner.</source>
   <translation>Unterlegen Sie jede Wand mit {spare}, machen Sie die Einlage neu, oder wählen Sie einen anderen Partner.</translation>
  </message>
  <message>
   <source>Both are finished: remake one, or choose another partner.</source>
   <translation>Beide sind fertig: Machen Sie eine neu, oder wählen Sie einen anderen Partner.</translation>
  </message>
  <message>
   <source>1 more spot is tighter than wanted, none as tight as these.</source>
   <translation>1 weitere Stelle ist enger als gewünscht, aber nicht so eng wie diese.</translation>
  </message>
  <message>
   <source>{rest} more spots are tighter than wanted, none as tight as these.</source>
   <translation>{rest} weitere Stellen sind enger als gewünscht, aber keine so eng wie diese.</translation>
  </message>
  <message>
   <source> along {stretch} of wall</source>
   <translation>, auf {stretch} Wandlänge</translation>
  </message>
  <message>
   <source>is larger than a part of the pocket</source>
   <translation>ist größer als ein Teil der Tasche</translation>
  </message>
  <message>
   <source>is larger than a hole of the plug</source>
   <translation>ist größer als ein Loch der Einlage</translation>
  </message>
  <message>
   <source>cannot pass a passage of the pocket</source>
   <translation>kommt nicht durch eine Engstelle der Tasche</translation>
  </message>
  <message>
   <source>cannot pass a slot of the plug</source>
   <translation>kommt nicht durch einen Schlitz der Einlage</translation>
  </message>
  <message>
   <source>cannot enter a narrow end of the pocket</source>
   <translation>kommt nicht in ein schmales Ende der Tasche</translation>
  </message>
  <message>
   <source>cannot enter a narrow slot of the plug</source>
   <translation>kommt nicht in einen schmalen Schlitz der Einlage</translation>
  </message>
  <message>
   <source>Take a smaller cutter, or widen the outline there.</source>
   <translation>Nehmen Sie einen kleineren Fräser, oder weiten Sie dort den Umriss.</translation>
  </message>
  <message>
   <source>, {width} wide</source>
   <translation>, {width} breit</translation>
  </message>
  <message>
   <source>Take a cutter of {passes} or less, or widen the outline there.</source>
   <translation>Nehmen Sie einen Fräser von höchstens {passes}, oder weiten Sie dort den Umriss.</translation>
  </message>
  <message>
   <source>The {cutter} cutter {fails} at {place}{size}; the fit leaves it out.</source>
   <translation>Der Fräser {cutter} {fails} bei {place}{size}; die Passung lässt die Stelle aus.</translation>
  </message>
  <message>
   <source>{corners} rounded to the {radius} radius of the pocket's cutter; at most {depth} of the drawing is left, at {place}.</source>
   <translation>{corners} auf den Radius {radius} des Taschenfräsers gerundet; höchstens {depth} der Zeichnung bleiben stehen, bei {place}.</translation>
  </message>
  <message>
   <source>Both halves match; choose another corner relief to keep the corners sharp.</source>
   <translation>Beide Hälften passen zueinander; wählen Sie eine andere Eckenfreistellung, wenn die Ecken scharf bleiben sollen.</translation>
  </message>
  <message>
   <source>1 corner is</source>
   <translation>1 Ecke ist</translation>
  </message>
  <message>
   <source>{count} corners are</source>
   <translation>{count} Ecken sind</translation>
  </message>
  <message>
   <source>1 corner</source>
   <translation>1 Ecke</translation>
  </message>
  <message>
   <source>{count} corners</source>
   <translation>{count} Ecken</translation>
  </message>
  <message>
   <source>Relieving the plug's corners leaves nothing of it, first at {place}.</source>
   <translation>Das Freistellen der Ecken lässt von der Einlage nichts übrig, zuerst bei {place}.</translation>
  </message>
  <message>
   <source>Take a smaller cutter for the plug.</source>
   <translation>Nehmen Sie für die Einlage einen kleineren Fräser.</translation>
  </message>
  <message>
   <source>{corners} relieved in the {half}: {removed} removed, the largest bite {bite} at {place}.</source>
   <translation>{corners} in der {half} freigestellt: {removed} abgetragen, am tiefsten {bite} bei {place}.</translation>
  </message>
  <message>
   <source>Look at the relieved corners: what is removed there shows as a gap.</source>
   <translation>Sehen Sie sich die freigestellten Ecken an: Was dort abgetragen ist, zeigt sich als Spalt.</translation>
  </message>
  <message>
   <source>No straight plunge clears the {half} at {place}: {removed} are removed there.</source>
   <translation>Kein gerader Eintauchschnitt macht die {half} bei {place} frei: Dort werden {removed} abgetragen.</translation>
  </message>
  <message>
   <source>Take a smaller cutter for this half if so large a gap must not show.</source>
   <translation>Nehmen Sie für diese Hälfte einen kleineren Fräser, wenn ein so großer Spalt nicht zu sehen sein darf.</translation>
  </message>
  <message>
   <source>At {place} what the plug's cutter needs is too narrow for the pocket's cutter.</source>
   <translation>Bei {place} ist für den Fräser der Tasche zu schmal, was der Fräser der Einlage braucht.</translation>
  </message>
  <message>
   <source>Take a smaller cutter for one half, or relieve the corners instead of rounding them.</source>
   <translation>Nehmen Sie für eine Hälfte einen kleineren Fräser, oder stellen Sie die Ecken frei, statt sie zu runden.</translation>
  </message>
  <message>
   <source>The {half} is called cut, but {corners} of its outline cannot be what a {cutter} cutter leaves (first at {place}); the {other} is fitted to what the cutter leaves there.</source>
   <translation>Die {half} gilt als geschnitten, aber {corners} ihres Umrisses kann ein Fräser {cutter} nicht gelassen haben (zuerst bei {place}); die {other} wird an das angepasst, was der Fräser dort lässt.</translation>
  </message>
  <message>
   <source>If those corners really are sharp, set the {half}'s cutter to 0.</source>
   <translation>Wenn diese Ecken wirklich scharf sind, setzen Sie den Fräser der {half} auf 0.</translation>
  </message>
  <message>
   <source>{corners} of the {half} must be pared by hand before the plug goes in; the largest is at {place}.</source>
   <translation>An der {half} ist von Hand nachzuarbeiten ({corners}), bevor die Einlage hineingeht; die größte Stelle liegt bei {place}.</translation>
  </message>
  <message>
   <source>Pare to the drawn line with a sharp chisel or file, away from the other hand.</source>
   <translation>Stechen oder feilen Sie bis zur gezeichneten Linie, scharf und von der anderen Hand weg.</translation>
  </message>
  <message>
   <source>A clearance of {clearance} leaves nothing of the plug.</source>
   <translation>Ein Spiel von {clearance} lässt von der Einlage nichts übrig.</translation>
  </message>
  <message>
   <source>Give a smaller clearance; check its unit.</source>
   <translation>Geben Sie ein kleineres Spiel an; prüfen Sie die Einheit.</translation>
  </message>
  <message>
   <source>The clearance takes the plug apart into {count} pieces; the smallest is at {place}.</source>
   <translation>Das Spiel zerlegt die Einlage in {count} Teile; das kleinste liegt bei {place}.</translation>
  </message>
  <message>
   <source>Give a smaller clearance, or widen the outline where it is thin.</source>
   <translation>Geben Sie ein kleineres Spiel an, oder weiten Sie den Umriss, wo er schmal ist.</translation>
  </message>
  <message>
   <source>The plug will not go in: it bites {bite} at {place}.</source>
   <translation>Die Einlage geht nicht hinein: Sie klemmt um {bite} bei {place}.</translation>
  </message>
  <message>
   <source>Relieve the corner, give more clearance, or let the other half give way.</source>
   <translation>Stellen Sie die Ecke frei, geben Sie mehr Spiel, oder lassen Sie die andere Hälfte nachgeben.</translation>
  </message>
  <message>
   <source>The plug is larger than the pocket by {interference}: press it in.</source>
   <translation>Die Einlage ist um {interference} größer als die Tasche: Pressen Sie sie ein.</translation>
  </message>
  <message>
   <source>Load it straight, wear eye protection, and keep hands clear; brittle stock may crack.</source>
   <translation>Pressen Sie gerade, tragen Sie eine Schutzbrille, und halten Sie die Hände fern; spröder Werkstoff kann reißen.</translation>
  </message>
  <message>
   <source>A clearance of {clearance} leaves nothing of the piece at {place}.</source>
   <translation>Ein Spiel von {clearance} lässt von dem Teil bei {place} nichts übrig.</translation>
  </message>
  <message>
   <source>Give a smaller clearance, or leave that outline out.</source>
   <translation>Geben Sie ein kleineres Spiel an, oder lassen Sie diesen Umriss weg.</translation>
  </message>
  <message>
   <source>The kerf's taper makes the gap {bed} on the bed side; the {governing} governs.</source>
   <translation>Mit der Schräge der Schnittfuge beträgt der Spalt auf der Bettseite {bed}; die {governing} entscheidet.</translation>
  </message>
  <message>
   <source>Expect {more} more gap per side below than is seen.</source>
   <translation>Rechnen Sie unten mit {more} mehr Spalt je Seite, als zu sehen ist.</translation>
  </message>
  <message>
   <source>Ask for {ask} if the bed side must have what is wanted.</source>
   <translation>Verlangen Sie {ask}, wenn die Bettseite das Gewünschte haben muss.</translation>
  </message>
  <message>
   <source>bed side</source>
   <translation>Bettseite</translation>
  </message>
  <message>
   <source>show side</source>
   <translation>Sichtseite</translation>
  </message>
  <message>
   <source>{told} There the plug bites.</source>
   <translation>{told} Dort klemmt die Einlage.</translation>
  </message>
  <message>
   <source>Ask for {ask}, so that the bed side has what is wanted, or cut with less taper.</source>
   <translation>Verlangen Sie {ask}, damit die Bettseite das Gewünschte hat, oder schneiden Sie mit weniger Schräge.</translation>
  </message>
  <message>
   <source>The feel words' edges must rise from press to rattles; check the trials behind them.</source>
   <translation>Die Grenzen der Sitzwörter müssen von gepresst bis klappernd steigen; prüfen Sie die Versuche dahinter.</translation>
  </message>
  <message>
   <source>The plug looks the same {motion}{others} but does not go in like that: its wall is off by {misfit}.</source>
   <translation>Die Einlage sieht {motion}{others} genauso aus, geht so aber nicht hinein: Ihre Wand liegt um {misfit} daneben.</translation>
  </message>
  <message>
   <source>Mark plug and pocket on the same side before taking the plug off the sheet; never force it.</source>
   <translation>Zeichnen Sie Einlage und Tasche auf derselben Seite an, bevor Sie die Einlage von der Platte nehmen; wenden Sie nie Gewalt an.</translation>
  </message>
  <message>
   <source>, and {count} other ways</source>
   <translation> und auf {count} weitere Arten</translation>
  </message>
  <message>
   <source>, and one other way</source>
   <translation> und auf eine weitere Art</translation>
  </message>
  <message>
   <source>turned by {degrees}°</source>
   <translation>um {degrees}° gedreht</translation>
  </message>
  <message>
   <source>flipped and turned by {degrees}°</source>
   <translation>gewendet und um {degrees}° gedreht</translation>
  </message>
  <message>
   <source>cutter nominal</source>
   <translation>Nenndurchmesser des Fräsers</translation>
  </message>
  <message>
   <source>cutter varies</source>
   <translation>Schwankung des Fräsers</translation>
  </message>
  <message>
   <source>runout</source>
   <translation>Rundlauffehler</translation>
  </message>
  <message>
   <source>repeatability</source>
   <translation>Wiederholgenauigkeit</translation>
  </message>
  <message>
   <source>thickness varies</source>
   <translation>Schwankung der Dicke</translation>
  </message>
  <message>
   <source>temperature varies</source>
   <translation>Schwankung der Temperatur</translation>
  </message>
  <message>
   <source>expansion difference per</source>
   <translation>Unterschied der Ausdehnung</translation>
  </message>
  <message>
   <source>An expansion is a few millionths per kelvin, such as 97e-6; check the number.</source>
   <translation>Eine Ausdehnung beträgt wenige Millionstel je Kelvin, etwa 97e-6; prüfen Sie die Zahl.</translation>
  </message>
  <message>
   <source>Warmth needs two numbers, the kelvin and the difference in expansion; give both.</source>
   <translation>Wärme braucht zwei Zahlen, die Kelvin und den Unterschied der Ausdehnung; geben Sie beide an.</translation>
  </message>
  <message>
   <source>The {name} is 0 or more; give it as a plain length.</source>
   <translation>Der Wert „{name}“ muss mindestens 0 sein; geben Sie ihn als einfache Länge an.</translation>
  </message>
  <message>
   <source>{axis}: {offset} {larger} at every length, ± {sure} overall, and {scale} by scale, ± {scale_sure}.</source>
   <translation>{axis}: {offset} {larger} bei jeder Länge, ± {sure} gesamt, und {scale} im Maßstab, ± {scale_sure}.</translation>
  </message>
  <message>
   <source>{pieces} and {islands}</source>
   <translation>{pieces} und {islands}</translation>
  </message>
  <message>
   <source>The {axis} readings do not lie on one line: the one at {nominal} is off by {off}; measure again, or state a larger repeatability.</source>
   <translation>Die Messwerte in {axis} liegen nicht auf einer Geraden: Der bei {nominal} weicht um {off} ab; messen Sie neu, oder geben Sie eine größere Wiederholgenauigkeit an.</translation>
  </message>
  <message>
   <source>1 piece</source>
   <translation>1 Teil</translation>
  </message>
  <message>
   <source>{count} pieces</source>
   <translation>{count} Teile</translation>
  </message>
  <message>
   <source>1 island</source>
   <translation>1 Insel</translation>
  </message>
  <message>
   <source>{count} islands</source>
   <translation>{count} Inseln</translation>
  </message>
  <message>
   <source>All {axis} readings are of the same length and cannot tell offset from scale; measure a longer or a shorter place too.</source>
   <translation>Alle Messwerte in {axis} haben dieselbe Länge und können Versatz und Maßstab nicht trennen; messen Sie auch eine längere oder kürzere Stelle.</translation>
  </message>
  <message>
   <source>The {axis} readings know the offset only to ± {offset}; measure places that differ more in length, or measure more often.</source>
   <translation>Die Messwerte in {axis} kennen den Versatz nur auf ± {offset}; messen Sie Stellen, deren Längen sich mehr unterscheiden, oder messen Sie öfter.</translation>
  </message>
  <message>
   <source>The {axis} readings give a scale of {scale}, which no machine has; check which reading belongs to which width, and the unit.</source>
   <translation>Die Messwerte in {axis} ergeben einen Maßstab von {scale}, den keine Maschine hat; prüfen Sie, welcher Messwert zu welcher Weite gehört, und die Einheit.</translation>
  </message>
  <message>
   <source>The {axis} readings give an offset of {offset}, which is another cutter; check the readings, and that they are widths of the recess.</source>
   <translation>Die Messwerte in {axis} ergeben einen Versatz von {offset}, das ist ein anderer Fräser; prüfen Sie die Messwerte, und ob es Weiten der Tasche sind.</translation>
  </message>
  <message>
   <source>By these readings nothing is left of the pocket; check them and their unit.</source>
   <translation>Nach diesen Messwerten bleibt von der Tasche nichts übrig; prüfen Sie sie und ihre Einheit.</translation>
  </message>
  <message>
   <source>By the readings the pocket has {new} where the drawing has {old}.</source>
   <translation>Nach den Messwerten hat die Tasche {new}, wo die Zeichnung {old} hat.</translation>
  </message>
  <message>
   <source>Look at its thinnest walls and narrowest passages, and measure there.</source>
   <translation>Sehen Sie sich ihre dünnsten Wände und engsten Stellen an, und messen Sie dort.</translation>
  </message>
  <message>
   <source>A reading in {axis} is not a finite number; type both lengths.</source>
   <translation>Ein Messwert in {axis} ist keine endliche Zahl; geben Sie beide Längen ein.</translation>
  </message>
  <message>
   <source>A reading in {axis} is not more than 0; type both widths of the recess.</source>
   <translation>Ein Messwert in {axis} ist nicht mehr als 0; geben Sie beide Weiten der Tasche ein.</translation>
  </message>
  <message>
   <source>A reading in {axis} is longer than a kilometre; check its unit.</source>
   <translation>Ein Messwert in {axis} ist länger als ein Kilometer; prüfen Sie seine Einheit.</translation>
  </message>
  <message>
   <source>A repeatability is more than 0; measure one width several times to learn it.</source>
   <translation>Eine Wiederholgenauigkeit ist mehr als 0; messen Sie eine Weite mehrmals, um sie zu erfahren.</translation>
  </message>
  <message>
   <source>{axis} has 1 reading; measure at two stations or more, one long and one short.</source>
   <translation>{axis} hat 1 Messwert; messen Sie an mindestens zwei Messstellen, einer langen und einer kurzen.</translation>
  </message>
  <message>
   <source>{axis} has no readings; measure at two stations or more, one long and one short.</source>
   <translation>{axis} hat keine Messwerte; messen Sie an mindestens zwei Messstellen, einer langen und einer kurzen.</translation>
  </message>
  <message>
   <source>smaller</source>
   <translation>kleiner</translation>
  </message>
  <message>
   <source>larger</source>
   <translation>größer</translation>
  </message>
  <message>
   <source>The plug is fitted to the pocket as measured, not as drawn.</source>
   <translation>Die Einlage wird an die Tasche angepasst, wie sie gemessen ist, nicht wie sie gezeichnet ist.</translation>
  </message>
  <message>
   <source>Compare the residuals of the readings with what one reading repeats to.</source>
   <translation>Vergleichen Sie die Abweichungen der Messwerte mit dem, worauf sich eine Messung wiederholt.</translation>
  </message>
  <message>
   <source>The longest reading along {axis} is of a width drawn as {read}, but the pocket is {wide} wide: its far ends are guessed.</source>
   <translation>Der längste Messwert in {axis} gehört zu einer gezeichneten Weite von {read}, die Tasche ist aber {wide} weit: Ihre fernen Enden sind geschätzt.</translation>
  </message>
  <message>
   <source>Check the unit that the drawing is read in, and measure a longer place if there is one.</source>
   <translation>Prüfen Sie die Einheit, in der die Zeichnung gelesen wird, und messen Sie eine längere Stelle, wenn es eine gibt.</translation>
  </message>
  <message>
   <source>Readings are taken in a pocket that exists; set the pocket's state to already cut, or leave the readings out.</source>
   <translation>Messwerte werden in einer Tasche genommen, die es gibt; stellen Sie die Tasche auf „geschnitten“, oder lassen Sie die Messwerte weg.</translation>
  </message>
  <message>
   <source>The pocket's cutter is larger than the drawn pocket; check its diameter.</source>
   <translation>Der Fräser der Tasche ist größer als die gezeichnete Tasche; prüfen Sie seinen Durchmesser.</translation>
  </message>
  <message>
   <source>A reading along {axis} is of a width drawn as {read}, but the pocket is only {wide} wide; check the readings, and the unit that the drawing is read in.</source>
   <translation>Ein Messwert in {axis} gehört zu einer gezeichneten Weite von {read}, die Tasche ist aber nur {wide} weit; prüfen Sie die Messwerte und die Einheit, in der die Zeichnung gelesen wird.</translation>
  </message>
  <message>
   <source>Only {wanted} of parts have the wanted feel ({feel}): {tighter} are tighter, {looser} looser.</source>
   <translation>Nur {wanted} der Teile haben den gewünschten Sitz ({feel}): {tighter} sind enger, {looser} loser.</translation>
  </message>
  <message>
   <source>The largest error is {largest}: make it smaller, or cut a few parts and choose.</source>
   <translation>Der größte Fehler: {largest}. Machen Sie ihn kleiner, oder schneiden Sie einige Teile und wählen Sie aus.</translation>
  </message>
  <message>
   <source>cutter not as its label says</source>
   <translation>Fräser nicht wie angeschrieben</translation>
  </message>
  <message>
   <source>No half is still to be cut with a cutter; leave the nominal diameter out.</source>
   <translation>Keine Hälfte ist noch mit einem Fräser zu schneiden; lassen Sie den Nenndurchmesser weg.</translation>
  </message>
  <message>
   <source>{effect}, to {left}.</source>
   <translation>{effect}, auf {left}.</translation>
  </message>
  <message>
   <source>Reckon the path with the measured diameter, and this does not happen.</source>
   <translation>Rechnen Sie die Bahn mit dem gemessenen Durchmesser, dann geschieht das nicht.</translation>
  </message>
  <message>
   <source>How a varying thickness moves a leaning wall depends on the depth; give it too.</source>
   <translation>Wie eine schwankende Dicke eine schräge Wand verschiebt, hängt von der Tiefe ab; geben Sie auch sie an.</translation>
  </message>
  <message>
   <source> and turned by {turn}°</source>
   <translation> und um {turn}° gedreht</translation>
  </message>
  <message>
   <source>The plug was moved by {dx} in X and {dy} in Y{turned} to where its smallest gap is largest.</source>
   <translation>Die Einlage wurde um {dx} in X und {dy} in Y verschoben{turned}, dorthin, wo ihr kleinster Spalt am größten ist.</translation>
  </message>
  <message>
   <source>Its outline is as drawn; the gaps are those of this seat.</source>
   <translation>Ihr Umriss ist wie gezeichnet; die Spalte gelten für diesen Sitz.</translation>
  </message>
  <message>
   <source>A plug can be seated only where both outlines are there; choose closed outlines.</source>
   <translation>Eine Einlage lässt sich nur einsetzen, wo beide Umrisse da sind; wählen Sie geschlossene Umrisse.</translation>
  </message>
  <message>
   <source>The outline is empty; choose a closed outline.</source>
   <translation>Der Umriss ist leer; wählen Sie einen geschlossenen Umriss.</translation>
  </message>
  <message>
   <source>Both halves are already cut; set one of them to cut, or give the plug's outline too.</source>
   <translation>Beide Hälften sind schon geschnitten; stellen Sie eine auf „zu schneiden“, oder geben Sie auch den Umriss der Einlage an.</translation>
  </message>
  <message>
   <source>cutter diameter</source>
   <translation>Fräserdurchmesser</translation>
  </message>
  <message>
   <source>finishing allowance</source>
   <translation>Schlichtaufmaß</translation>
  </message>
  <message>
   <source>kerf</source>
   <translation>Schnittfuge</translation>
  </message>
  <message>
   <source>kerf's taper</source>
   <translation>Schräge der Schnittfuge</translation>
  </message>
  <message>
   <source>corner cutter's diameter</source>
   <translation>Durchmesser des Eckenfräsers</translation>
  </message>
  <message>
   <source>edge break</source>
   <translation>Kantenbruch</translation>
  </message>
  <message>
   <source>clearance</source>
   <translation>Spiel</translation>
  </message>
  <message>
   <source>thinnest wall</source>
   <translation>dünnste Wand</translation>
  </message>
  <message>
   <source>The {name} is not a finite number; type a length such as 0.05 mm.</source>
   <translation>Der Wert „{name}“ ist keine endliche Zahl; geben Sie eine Länge wie 0.05 mm ein.</translation>
  </message>
  <message>
   <source>An edge break cannot be negative; give 0 for none.</source>
   <translation>Ein Kantenbruch kann nicht negativ sein; geben Sie 0 für keinen ein.</translation>
  </message>
  <message>
   <source>A corner cutter of {corner} must be smaller than the main cutter of {main}; give 0 for none.</source>
   <translation>Ein Eckenfräser von {corner} muss kleiner sein als der Hauptfräser von {main}; geben Sie 0 für keinen ein.</translation>
  </message>
  <message>
   <source>A cutter of {cutter} is too small; give its measured diameter in mm, or add a unit such as 1/8in.</source>
   <translation>Ein Fräser von {cutter} ist zu klein; geben Sie seinen gemessenen Durchmesser in mm ein, oder fügen Sie eine Einheit an, etwa 1/8in.</translation>
  </message>
  <message>
   <source>A finishing allowance cannot be negative; give 0 for none.</source>
   <translation>Ein Schlichtaufmaß kann nicht negativ sein; geben Sie 0 für keines ein.</translation>
  </message>
  <message>
   <source>A kerf cannot be negative; give the full width of the cut.</source>
   <translation>Eine Schnittfuge kann nicht negativ sein; geben Sie die volle Breite des Schnitts ein.</translation>
  </message>
  <message>
   <source>A clearance of {clearance} per side is more than {most}; check its unit.</source>
   <translation>Ein Spiel von {clearance} je Seite ist mehr als {most}; prüfen Sie die Einheit.</translation>
  </message>
  <message>
   <source>Widen the outline there, hold it with tape over the whole face, or take lighter passes.</source>
   <translation>Weiten Sie dort den Umriss, halten Sie das Teil mit vollflächigem Klebeband, oder nehmen Sie weniger je Durchgang.</translation>
  </message>
  <message>
   <source>The plug has a neck or tenon only {width} thick at {place}; less than {thin} may not survive.</source>
   <translation>Die Einlage hat einen Hals oder Zapfen von nur {width} Dicke bei {place}; was dünner ist als {thin}, hält vielleicht nicht.</translation>
  </message>
  <message>
   <source>The host has a wall only {width} thick at {place}; less than {thin} may not survive.</source>
   <translation>Der Träger hat eine Wand von nur {width} Dicke bei {place}; was dünner ist als {thin}, hält vielleicht nicht.</translation>
  </message>
  <message>
   <source>stock thickness</source>
   <translation>Dicke des Werkstoffs</translation>
  </message>
  <message>
   <source>both halves are cut with it, so the pocket comes out small and the plug big</source>
   <translation>beide Hälften werden mit ihm geschnitten, die Tasche wird also kleiner und die Einlage größer</translation>
  </message>
  <message>
   <source>the pocket comes out small</source>
   <translation>die Tasche wird kleiner</translation>
  </message>
  <message>
   <source>the plug comes out big</source>
   <translation>die Einlage wird größer</translation>
  </message>
  <message>
   <source>both halves are cut with it, so the pocket comes out big and the plug small</source>
   <translation>beide Hälften werden mit ihm geschnitten, die Tasche wird also größer und die Einlage kleiner</translation>
  </message>
  <message>
   <source>the pocket comes out big</source>
   <translation>die Tasche wird größer</translation>
  </message>
  <message>
   <source>the plug comes out small</source>
   <translation>die Einlage wird kleiner</translation>
  </message>
  <message>
   <source>The cutter measures {measured}, not {nominal}: {effect}, and the clearance per side {falls} by {whole}, {amount}</source>
   <translation>Der Fräser misst {measured}, nicht {nominal}: {effect}, und das Spiel je Seite {falls} um {whole}, {amount}</translation>
  </message>
  <message>
   <source>temperature</source>
   <translation>Temperatur</translation>
  </message>
  <message>
   <source>both halves</source>
   <translation>beide Hälften</translation>
  </message>
  <message>
   <source>The cutter measures {measured}, as reckoned with: nothing changes</source>
   <translation>Der Fräser misst {measured}, wie gerechnet: Nichts ändert sich</translation>
  </message>
  <message>
   <source>the whole error</source>
   <translation>den ganzen Fehler</translation>
  </message>
  <message>
   <source>half the error</source>
   <translation>den halben Fehler</translation>
  </message>
  <message>
   <source>The clearance is not a finite number; type a length such as 0.05 mm.</source>
   <translation>Das Spiel ist keine endliche Zahl; geben Sie eine Länge wie 0.05 mm ein.</translation>
  </message>
  <message>
   <source>Between 1 and {most} parts can be drawn; change their number.</source>
   <translation>Zwischen 1 und {most} Teile lassen sich ziehen; ändern Sie ihre Zahl.</translation>
  </message>
  <message>
   <source>pocket, part to part</source>
   <translation>Tasche, von Teil zu Teil</translation>
  </message>
  <message>
   <source>plug, part to part</source>
   <translation>Einlage, von Teil zu Teil</translation>
  </message>
  <message>
   <source>A cutter of {measured} cannot be the one of {nominal}; check both numbers.</source>
   <translation>Ein Fräser von {measured} kann nicht der von {nominal} sein; prüfen Sie beide Zahlen.</translation>
  </message>
  <message>
   <source>A repeatability is a length of 0 or more; measure the same cut several times.</source>
   <translation>Eine Wiederholgenauigkeit ist eine Länge von mindestens 0; messen Sie denselben Schnitt mehrmals.</translation>
  </message>
  <message>
   <source>The tolerance “{name}” is not a finite number; give its ± in mm.</source>
   <translation>Die Toleranz „{name}“ ist keine endliche Zahl; geben Sie ihr ± in mm an.</translation>
  </message>
  <message>
   <source>The tolerance “{name}” is negative; give its ± as 0 or more.</source>
   <translation>Die Toleranz „{name}“ ist negativ; geben Sie ihr ± mit mindestens 0 an.</translation>
  </message>
  <message>
   <source>The wanted zone of clearance is empty; give its tight limit first.</source>
   <translation>Der gewünschte Bereich des Spiels ist leer; geben Sie zuerst die enge Grenze an.</translation>
  </message>
  <message>
   <source>A cutter's diameter is more than 0; give what you measured and what was assumed.</source>
   <translation>Der Durchmesser eines Fräsers ist mehr als 0; geben Sie an, was Sie gemessen haben und womit gerechnet wurde.</translation>
  </message>
  <message>
   <source>falls</source>
   <translation>sinkt</translation>
  </message>
  <message>
   <source>rises</source>
   <translation>steigt</translation>
  </message>
  <message>
   <source>depth</source>
   <translation>Tiefe</translation>
  </message>
  <message>
   <source>depth per pass</source>
   <translation>Tiefe je Durchgang</translation>
  </message>
  <message>
   <source>floor allowance</source>
   <translation>Aufmaß am Grund</translation>
  </message>
  <message>
   <source>floor fillet</source>
   <translation>Kehle am Grund</translation>
  </message>
  <message>
   <source>The floor fillet of {fillet} holds the plug {height} above the floor.</source>
   <translation>Die Kehle von {fillet} am Grund hält die Einlage {height} über dem Grund.</translation>
  </message>
  <message>
   <source>Break the plug's lower edge by {needed}, or cut the floor with a sharp cutter.</source>
   <translation>Brechen Sie die Unterkante der Einlage um {needed}, oder schneiden Sie den Grund mit einem scharfen Fräser.</translation>
  </message>
  <message>
   <source>A depth per pass needs the depth of the cut; give both.</source>
   <translation>Eine Tiefe je Durchgang braucht die Tiefe des Schnitts; geben Sie beide an.</translation>
  </message>
  <message>
   <source>A floor allowance needs the depth and the depth per pass; give all three.</source>
   <translation>Ein Aufmaß am Grund braucht die Tiefe und die Tiefe je Durchgang; geben Sie alle drei an.</translation>
  </message>
  <message>
   <source>The {name} is 0 or more; give it as a length such as 2 mm.</source>
   <translation>Der Wert „{name}“ muss mindestens 0 sein; geben Sie eine Länge wie 2 mm ein.</translation>
  </message>
  <message>
   <source>Convert what should be cut to lines in the drawing program, and save again.</source>
   <translation>Wandeln Sie, was geschnitten werden soll, im Zeichenprogramm in Linien um und speichern Sie neu.</translation>
  </message>
  <message>
   <source>Draw as lines what should be cut; else there is nothing to do.</source>
   <translation>Zeichnen Sie als Linien, was geschnitten werden soll; sonst ist nichts zu tun.</translation>
  </message>
  <message>
   <source>Show the layer in the drawing program, or choose it here, if it should be cut.</source>
   <translation>Blenden Sie die Ebene im Zeichenprogramm ein, oder wählen Sie sie hier, wenn sie geschnitten werden soll.</translation>
  </message>
  <message>
   <source>text</source>
   <translation>Text</translation>
  </message>
  <message>
   <source>texts</source>
   <translation>Texte</translation>
  </message>
  <message>
   <source>Convert the text to lines in the drawing program and save again.</source>
   <translation>Wandeln Sie den Text im Zeichenprogramm in Linien um und speichern Sie neu.</translation>
  </message>
  <message>
   <source>dimension or leader</source>
   <translation>Bemaßung oder Hinweislinie</translation>
  </message>
  <message>
   <source>dimensions and leaders</source>
   <translation>Bemaßungen und Hinweislinien</translation>
  </message>
  <message>
   <source>point</source>
   <translation>Punkt</translation>
  </message>
  <message>
   <source>points</source>
   <translation>Punkte</translation>
  </message>
  <message>
   <source>picture</source>
   <translation>Bild</translation>
  </message>
  <message>
   <source>pictures</source>
   <translation>Bilder</translation>
  </message>
  <message>
   <source>Trace the picture, or draw the outline again as lines.</source>
   <translation>Zeichnen Sie das Bild nach, oder zeichnen Sie den Umriss neu als Linien.</translation>
  </message>
  <message>
   <source>three-dimensional body or mesh</source>
   <translation>räumlicher Körper oder Netz</translation>
  </message>
  <message>
   <source>three-dimensional bodies and meshes</source>
   <translation>räumliche Körper und Netze</translation>
  </message>
  <message>
   <source>Save a flat view of its outline (a projection or a section) as DXF.</source>
   <translation>Speichern Sie eine flache Ansicht des Umrisses (eine Projektion oder einen Schnitt) als DXF.</translation>
  </message>
  <message>
   <source>endless construction line</source>
   <translation>endlose Hilfslinie</translation>
  </message>
  <message>
   <source>endless construction lines</source>
   <translation>endlose Hilfslinien</translation>
  </message>
  <message>
   <source>part that lies in another file</source>
   <translation>Teil, das in einer anderen Datei liegt</translation>
  </message>
  <message>
   <source>parts that lie in other files</source>
   <translation>Teile, die in anderen Dateien liegen</translation>
  </message>
  <message>
   <source>Bind the outside file into this drawing; other files are never opened.</source>
   <translation>Binden Sie die fremde Datei in diese Zeichnung ein; andere Dateien werden nie geöffnet.</translation>
  </message>
  <message>
   <source>element of a kind that is not read</source>
   <translation>Element einer Art, die nicht gelesen wird</translation>
  </message>
  <message>
   <source>elements of a kind that is not read</source>
   <translation>Elemente einer Art, die nicht gelesen wird</translation>
  </message>
  <message>
   <source>element without size or with impossible numbers</source>
   <translation>Element ohne Größe oder mit unmöglichen Zahlen</translation>
  </message>
  <message>
   <source>elements without size or with impossible numbers</source>
   <translation>Elemente ohne Größe oder mit unmöglichen Zahlen</translation>
  </message>
  <message>
   <source>Draw again what is missing, or delete what has no size.</source>
   <translation>Zeichnen Sie neu, was fehlt, oder löschen Sie, was keine Größe hat.</translation>
  </message>
  <message>
   <source>element too far away to be meant</source>
   <translation>Element, das zu weit weg liegt, um gemeint zu sein</translation>
  </message>
  <message>
   <source>elements too far away to be meant</source>
   <translation>Elemente, die zu weit weg liegen, um gemeint zu sein</translation>
  </message>
  <message>
   <source>Delete what is not meant, or move it back near the drawing.</source>
   <translation>Löschen Sie, was nicht gemeint ist, oder rücken Sie es zur Zeichnung zurück.</translation>
  </message>
  <message>
   <source>element that does not lie flat; it is seen from above</source>
   <translation>Element, das nicht flach liegt; es wird von oben gesehen</translation>
  </message>
  <message>
   <source>elements that do not lie flat; they are seen from above</source>
   <translation>Elemente, die nicht flach liegen; sie werden von oben gesehen</translation>
  </message>
  <message>
   <source>Save a flat drawing if its size matters.</source>
   <translation>Speichern Sie eine flache Zeichnung, wenn es auf die Größe ankommt.</translation>
  </message>
  <message>
   <source>line with a width; its middle is taken</source>
   <translation>Linie mit Breite; ihre Mitte wird genommen</translation>
  </message>
  <message>
   <source>lines with a width; their middles are taken</source>
   <translation>Linien mit Breite; ihre Mitten werden genommen</translation>
  </message>
  <message>
   <source>Draw the edges of the wide line if these are the outline.</source>
   <translation>Zeichnen Sie die Ränder der breiten Linie, wenn sie der Umriss sind.</translation>
  </message>
  <message>
   <source>piece without length was left out</source>
   <translation>Stück ohne Länge wurde weggelassen</translation>
  </message>
  <message>
   <source>pieces without length were left out</source>
   <translation>Stücke ohne Länge wurden weggelassen</translation>
  </message>
  <message>
   <source>element on a layer that is off or frozen was set aside</source>
   <translation>Element auf einer ausgeblendeten oder gefrorenen Ebene wurde beiseitegelegt</translation>
  </message>
  <message>
   <source>elements on layers that are off or frozen were set aside</source>
   <translation>Elemente auf ausgeblendeten oder gefrorenen Ebenen wurden beiseitegelegt</translation>
  </message>
  <message>
   <source>line drawn for construction, dimensions or centres was set aside</source>
   <translation>Linie für Hilfszwecke, Maße oder Mitten wurde beiseitegelegt</translation>
  </message>
  <message>
   <source>lines drawn for construction, dimensions or centres were set aside</source>
   <translation>Linien für Hilfszwecke, Maße oder Mitten wurden beiseitegelegt</translation>
  </message>
  <message>
   <source>Choose the layer here if these lines should be cut.</source>
   <translation>Wählen Sie hier die Ebene, wenn diese Linien geschnitten werden sollen.</translation>
  </message>
  <message>
   <source>filled area whose edge is also drawn as lines; the lines count</source>
   <translation>gefüllte Fläche, deren Rand auch als Linien gezeichnet ist; die Linien zählen</translation>
  </message>
  <message>
   <source>filled areas whose edges are also drawn as lines; the lines count</source>
   <translation>gefüllte Flächen, deren Ränder auch als Linien gezeichnet sind; die Linien zählen</translation>
  </message>
  <message>
   <source>reference to a block that is not in the file</source>
   <translation>Verweis auf einen Block, der nicht in der Datei ist</translation>
  </message>
  <message>
   <source>references to blocks that are not in the file</source>
   <translation>Verweise auf Blöcke, die nicht in der Datei sind</translation>
  </message>
  <message>
   <source>Save the drawing again together with its blocks.</source>
   <translation>Speichern Sie die Zeichnung noch einmal mitsamt ihren Blöcken.</translation>
  </message>
  <message>
   <source>reference to a block too deep inside of others</source>
   <translation>Verweis auf einen Block, der zu tief in anderen steckt</translation>
  </message>
  <message>
   <source>references to blocks too deep inside of others</source>
   <translation>Verweise auf Blöcke, die zu tief in anderen stecken</translation>
  </message>
  <message>
   <source>Explode the blocks in the drawing program and save again.</source>
   <translation>Lösen Sie die Blöcke im Zeichenprogramm auf und speichern Sie neu.</translation>
  </message>
  <message>
   <source>block that contains itself was left out</source>
   <translation>Block, der sich selbst enthält, wurde weggelassen</translation>
  </message>
  <message>
   <source>blocks that contain themselves were left out</source>
   <translation>Blöcke, die sich selbst enthalten, wurden weggelassen</translation>
  </message>
  <message>
   <source>Delete the reference that leads back to its own block.</source>
   <translation>Löschen Sie den Verweis, der auf seinen eigenen Block zurückführt.</translation>
  </message>
  <message>
   <source> ({names} and more)</source>
   <translation> ({names} und weitere)</translation>
  </message>
  <message>
   <source>, the first at {there}</source>
   <translation>, zuerst bei {there}</translation>
  </message>
  <message>
   <source>, at {there}</source>
   <translation>, bei {there}</translation>
  </message>
  <message>
   <source>“{name}” is damaged beyond repair; save it again from the drawing program.</source>
   <translation>„{name}“ ist so beschädigt, dass nichts zu retten ist; speichern Sie die Datei im Zeichenprogramm noch einmal.</translation>
  </message>
  <message>
   <source>Check that nothing is missing, or save it again from the drawing program.</source>
   <translation>Prüfen Sie, ob nichts fehlt, oder speichern Sie die Datei im Zeichenprogramm noch einmal.</translation>
  </message>
  <message>
   <source> ({flaws} flaws mended)</source>
   <translation> ({flaws} Fehler behoben)</translation>
  </message>
  <message>
   <source> (one flaw mended)</source>
   <translation> (ein Fehler behoben)</translation>
  </message>
  <message>
   <source>The file ends in the middle; what could be read was recovered{mended}.</source>
   <translation>Die Datei endet mittendrin; was lesbar war, wurde gerettet{mended}.</translation>
  </message>
  <message>
   <source>The file is damaged; what could be read was recovered{mended}.</source>
   <translation>Die Datei ist beschädigt; was lesbar war, wurde gerettet{mended}.</translation>
  </message>
  <message>
   <source>“{name}” changed while it was read; wait until it is saved, then open it again.</source>
   <translation>„{name}“ änderte sich beim Lesen; warten Sie, bis die Datei gespeichert ist, dann öffnen Sie sie noch einmal.</translation>
  </message>
  <message>
   <source>“{name}” is empty; save the drawing again.</source>
   <translation>„{name}“ ist leer; speichern Sie die Zeichnung noch einmal.</translation>
  </message>
  <message>
   <source>“{name}” is not a DXF file; save the drawing as DXF or SVG.</source>
   <translation>„{name}“ ist keine DXF-Datei; speichern Sie die Zeichnung als DXF oder SVG.</translation>
  </message>
  <message>
   <source>“{name}” holds {values} values, more than the {most} that are read; save only the outline, with fewer points, as a file of its own.</source>
   <translation>„{name}“ enthält {values} Werte, mehr als die {most}, die gelesen werden; speichern Sie nur den Umriss, mit weniger Punkten, als eigene Datei.</translation>
  </message>
  <message>
   <source>“{name}” holds {points} points, more than the {most} that are read; save the outline with fewer points.</source>
   <translation>„{name}“ enthält {points} Punkte, mehr als die {most}, die gelesen werden; speichern Sie den Umriss mit weniger Punkten.</translation>
  </message>
  <message>
   <source>“{name}” is damaged and too large to repair; save it again.</source>
   <translation>„{name}“ ist beschädigt und zum Reparieren zu groß; speichern Sie die Datei noch einmal.</translation>
  </message>
  <message>
   <source>“{name}” is a folder; choose a DXF or SVG file.</source>
   <translation>„{name}“ ist ein Ordner; wählen Sie eine DXF- oder SVG-Datei.</translation>
  </message>
  <message>
   <source>“{name}” is no plain file; choose a DXF or SVG file.</source>
   <translation>„{name}“ ist keine gewöhnliche Datei; wählen Sie eine DXF- oder SVG-Datei.</translation>
  </message>
  <message>
   <source>“{name}” has {megabytes} MB, more than {most} MB, and is not read; save only the outline as a file of its own.</source>
   <translation>„{name}“ hat {megabytes} MB, mehr als {most} MB, und wird nicht gelesen; speichern Sie nur den Umriss als eigene Datei.</translation>
  </message>
  <message>
   <source>“{name}” does not exist; check its name and folder.</source>
   <translation>„{name}“ gibt es nicht; prüfen Sie Namen und Ordner.</translation>
  </message>
  <message>
   <source>“{name}” may not be read; ask for permission to read it.</source>
   <translation>„{name}“ darf nicht gelesen werden; lassen Sie sich das Lesen erlauben.</translation>
  </message>
  <message>
   <source>“{name}” could not be read; copy it to this computer and try again.</source>
   <translation>„{name}“ ließ sich nicht lesen; kopieren Sie die Datei auf diesen Rechner und versuchen Sie es noch einmal.</translation>
  </message>
  <message>
   <source>“{name}” holds no outline: {message} {remedy}</source>
   <translation>„{name}“ enthält keinen Umriss: {message} {remedy}</translation>
  </message>
  <message>
   <source>{mm} (as it is shown now) if it was drawn in millimetres, {inches} = {inches_in_mm} if in inches</source>
   <translation>{mm} (wie jetzt gezeigt), wenn sie in Millimetern gezeichnet ist, {inches} = {inches_in_mm}, wenn in Zoll</translation>
  </message>
  <message>
   <source>“{name}” is empty: it draws nothing; save the drawing again with its shapes.</source>
   <translation>„{name}“ ist leer: Die Datei zeichnet nichts; speichern Sie die Zeichnung noch einmal mit ihren Formen.</translation>
  </message>
  <message>
   <source>The drawing states no unit: {sizes}.</source>
   <translation>Die Zeichnung nennt keine Einheit: {sizes}.</translation>
  </message>
  <message>
   <source>Choose the unit that gives the size it should have.</source>
   <translation>Wählen Sie die Einheit, in der die Größe stimmt.</translation>
  </message>
  <message>
   <source>“{name}” holds {count} points, more than the {most} that are read; save the outline with fewer points.</source>
   <translation>„{name}“ enthält {count} Punkte, mehr als die {most}, die gelesen werden; speichern Sie den Umriss mit weniger Punkten.</translation>
  </message>
  <message>
   <source>miles</source>
   <translation>Meilen</translation>
  </message>
  <message>
   <source>kilometres</source>
   <translation>Kilometer</translation>
  </message>
  <message>
   <source>angstroms</source>
   <translation>Ångström</translation>
  </message>
  <message>
   <source>gigametres</source>
   <translation>Gigameter</translation>
  </message>
  <message>
   <source>astronomical units</source>
   <translation>astronomische Einheiten</translation>
  </message>
  <message>
   <source>light years</source>
   <translation>Lichtjahre</translation>
  </message>
  <message>
   <source>parsecs</source>
   <translation>Parsec</translation>
  </message>
  <message>
   <source>US survey miles</source>
   <translation>US-Vermessungsmeilen</translation>
  </message>
  <message>
   <source>The drawing {said}, which no part is drawn in; it is read as if it were in millimetres.</source>
   <translation>Die Zeichnung {said}, worin kein Teil gezeichnet wird; sie wird gelesen, als wäre sie in Millimetern.</translation>
  </message>
  <message>
   <source>microinches</source>
   <translation>Mikrozoll</translation>
  </message>
  <message>
   <source>yards</source>
   <translation>Yard</translation>
  </message>
  <message>
   <source>nanometres</source>
   <translation>Nanometer</translation>
  </message>
  <message>
   <source>decimetres</source>
   <translation>Dezimeter</translation>
  </message>
  <message>
   <source>decametres</source>
   <translation>Dekameter</translation>
  </message>
  <message>
   <source>hectometres</source>
   <translation>Hektometer</translation>
  </message>
  <message>
   <source>US survey feet</source>
   <translation>US-Vermessungsfuß</translation>
  </message>
  <message>
   <source>US survey inches</source>
   <translation>US-Vermessungszoll</translation>
  </message>
  <message>
   <source>US survey yards</source>
   <translation>US-Vermessungsyard</translation>
  </message>
  <message>
   <source>The drawing is in {name}; it was converted to millimetres.</source>
   <translation>Die Einheit der Zeichnung: {name}; sie wurde in Millimeter umgerechnet.</translation>
  </message>
  <message>
   <source>Nothing to do, unless the size is wrong: then choose another unit.</source>
   <translation>Nichts zu tun, außer die Größe stimmt nicht: Dann wählen Sie eine andere Einheit.</translation>
  </message>
  <message>
   <source>says its unit is {unit}</source>
   <translation>nennt als ihre Einheit {unit}</translation>
  </message>
  <message>
   <source>states an unknown unit ({code})</source>
   <translation>nennt eine unbekannte Einheit ({code})</translation>
  </message>
  <message>
   <source>“{name}” holds {count} elements once its blocks are spread out, more than the {most} that are read; save only the outline as a file of its own.</source>
   <translation>„{name}“ enthält {count} Elemente, wenn seine Blöcke aufgelöst sind, mehr als die {most}, die gelesen werden; speichern Sie nur den Umriss als eigene Datei.</translation>
  </message>
  <message>
   <source>about 10^{power}</source>
   <translation>etwa 10^{power}</translation>
  </message>
  <message>
   <source>“{name}” is neither DXF nor SVG nor a table of points; save the drawing as DXF or SVG.</source>
   <translation>„{name}“ ist weder DXF noch SVG noch eine Punktetabelle; speichern Sie die Zeichnung als DXF oder SVG.</translation>
  </message>
  <message>
   <source>a DWG drawing</source>
   <translation>eine DWG-Zeichnung</translation>
  </message>
  <message>
   <source>a PDF</source>
   <translation>ein PDF</translation>
  </message>
  <message>
   <source>a PostScript file</source>
   <translation>eine PostScript-Datei</translation>
  </message>
  <message>
   <source>a picture (PNG)</source>
   <translation>ein Bild (PNG)</translation>
  </message>
  <message>
   <source>a picture (JPEG)</source>
   <translation>ein Bild (JPEG)</translation>
  </message>
  <message>
   <source>a picture (GIF)</source>
   <translation>ein Bild (GIF)</translation>
  </message>
  <message>
   <source>a picture (BMP)</source>
   <translation>ein Bild (BMP)</translation>
  </message>
  <message>
   <source>a STEP model</source>
   <translation>ein STEP-Modell</translation>
  </message>
  <message>
   <source>a three-dimensional model (STL)</source>
   <translation>ein räumliches Modell (STL)</translation>
  </message>
  <message>
   <source>a packed folder (ZIP)</source>
   <translation>ein gepackter Ordner (ZIP)</translation>
  </message>
  <message>
   <source>a web page</source>
   <translation>eine Webseite</translation>
  </message>
  <message>
   <source>“{name}” is a project of this program; open it in the window, or name the drawing it holds.</source>
   <translation>„{name}“ ist ein Projekt dieses Programms; öffnen Sie es im Fenster, oder nennen Sie die Zeichnung, aus der es ist.</translation>
  </message>
  <message>
   <source>“{name}” is {what}; save the drawing as DXF or SVG.</source>
   <translation>„{name}“ ist {what}; speichern Sie die Zeichnung als DXF oder SVG.</translation>
  </message>
  <message>
   <source>The table states no unit: {mm} (as it is shown now) if it was measured in millimetres, {inches} = {inches_in_mm} if in inches.</source>
   <translation>Die Tabelle nennt keine Einheit: {mm} (wie jetzt gezeigt), wenn in Millimetern gemessen wurde, {inches} = {inches_in_mm}, wenn in Zoll.</translation>
  </message>
  <message>
   <source>“{name}” holds {points} points but no contour of three; add the missing points.</source>
   <translation>„{name}“ enthält {points} Punkte, aber keinen Umriss aus dreien; ergänzen Sie die fehlenden Punkte.</translation>
  </message>
  <message>
   <source>Choose the unit, or write `# unit: mm` in the first line.</source>
   <translation>Wählen Sie die Einheit, oder schreiben Sie `# unit: mm` in die erste Zeile.</translation>
  </message>
  <message>
   <source>“{name}” holds {lines} lines, more than the {most} points that are read; measure fewer points.</source>
   <translation>„{name}“ enthält {lines} Zeilen, mehr als die {most} Punkte, die gelesen werden; messen Sie weniger Punkte.</translation>
  </message>
  <message>
   <source>“{name}” holds no points; give one point a line, such as 12.5, 40.</source>
   <translation>„{name}“ enthält keine Punkte; geben Sie einen Punkt je Zeile an, etwa 12.5, 40.</translation>
  </message>
  <message>
   <source>1 contour has fewer than three points.</source>
   <translation>1 Umriss hat weniger als drei Punkte.</translation>
  </message>
  <message>
   <source>{count} contours have fewer than three points.</source>
   <translation>{count} Umrisse haben weniger als drei Punkte.</translation>
  </message>
  <message>
   <source>{count} lines hold no point: line {shown} and more.</source>
   <translation>Zeilen, in denen kein Punkt steht: {count} (Zeile {shown} und weitere).</translation>
  </message>
  <message>
   <source>{count} lines hold no point: line {shown}.</source>
   <translation>Zeilen, in denen kein Punkt steht: {count} (Zeile {shown}).</translation>
  </message>
  <message>
   <source>Add the missing points.</source>
   <translation>Ergänzen Sie die fehlenden Punkte.</translation>
  </message>
  <message>
   <source>Give two numbers a line, such as 12.5, 40.</source>
   <translation>Geben Sie zwei Zahlen je Zeile an, etwa 12.5, 40.</translation>
  </message>
  <message>
   <source>“{name}” is too large for a table of readings; check the file.</source>
   <translation>„{name}“ ist zu groß für eine Tabelle von Messwerten; prüfen Sie die Datei.</translation>
  </message>
  <message>
   <source>“{name}” holds no readings; give one a line, such as X, 40, 40.052.</source>
   <translation>„{name}“ enthält keine Messwerte; geben Sie einen je Zeile an, etwa X, 40, 40.052.</translation>
  </message>
  <message>
   <source>Line {line} of “{name}” is not a reading; give axis, drawn width and width read, such as X, 40, 40.052.</source>
   <translation>Zeile {line} von „{name}“ ist kein Messwert; geben Sie Achse, gezeichnete und gemessene Weite an, etwa X, 40, 40.052.</translation>
  </message>
  <message>
   <source>{label} is painted with a gradient.</source>
   <translation>{label} ist mit einem Verlauf gefüllt.</translation>
  </message>
  <message>
   <source>{label} is painted with a pattern.</source>
   <translation>{label} ist mit einem Muster gefüllt.</translation>
  </message>
  <message>
   <source>{label} has markers, which are left out.</source>
   <translation>{label} hat Pfeilspitzen, die weggelassen werden.</translation>
  </message>
  <message>
   <source>{label} has a mask, which is not applied.</source>
   <translation>{label} hat eine Maske, die nicht angewandt wird.</translation>
  </message>
  <message>
   <source>{label} has a filter, which is not applied.</source>
   <translation>{label} hat einen Filter, der nicht angewandt wird.</translation>
  </message>
  <message>
   <source>The drawing has too many style rules for its elements; save it as plain SVG.</source>
   <translation>Die Zeichnung hat zu viele Stilregeln für ihre Elemente; speichern Sie sie als einfaches SVG.</translation>
  </message>
  <message>
   <source>“{name}” is not well-formed SVG ({reason}, line {line}, column {column}); save it again from the drawing program.</source>
   <translation>„{name}“ ist kein wohlgeformtes SVG ({reason}, Zeile {line}, Spalte {column}); speichern Sie die Datei im Zeichenprogramm noch einmal.</translation>
  </message>
  <message>
   <source>{element} in line {line}</source>
   <translation>{element} in Zeile {line}</translation>
  </message>
  <message>
   <source>“{name}” is XML, but not an SVG drawing; choose an SVG file.</source>
   <translation>„{name}“ ist XML, aber keine SVG-Zeichnung; wählen Sie eine SVG-Datei.</translation>
  </message>
  <message>
   <source>“{name}” is in a text encoding that cannot be read; save it again as UTF-8.</source>
   <translation>„{name}“ hat eine Textkodierung, die nicht lesbar ist; speichern Sie die Datei als UTF-8.</translation>
  </message>
  <message>
   <source>“{name}” cannot be read ({reason}); check its permissions.</source>
   <translation>„{name}“ ist nicht lesbar ({reason}); prüfen Sie die Zugriffsrechte.</translation>
  </message>
  <message>
   <source>“{name}” is compressed, but cut off; save it again as plain SVG.</source>
   <translation>„{name}“ ist gepackt, aber abgeschnitten; speichern Sie die Datei als einfaches SVG.</translation>
  </message>
  <message>
   <source>“{name}” is larger than {megabytes} MB; save only the outlines you need.</source>
   <translation>„{name}“ ist größer als {megabytes} MB; speichern Sie nur die Umrisse, die Sie brauchen.</translation>
  </message>
  <message>
   <source>“{name}” {why}.</source>
   <translation>„{name}“ {why}.</translation>
  </message>
  <message>
   <source>There is no file “{name}”; check its name and folder.</source>
   <translation>Eine Datei „{name}“ gibt es nicht; prüfen Sie Namen und Ordner.</translation>
  </message>
  <message>
   <source>“{name}” is not a file; choose an SVG file.</source>
   <translation>„{name}“ ist keine Datei; wählen Sie eine SVG-Datei.</translation>
  </message>
  <message>
   <source>the name cannot be used</source>
   <translation>der Name ist nicht verwendbar</translation>
  </message>
  <message>
   <source>“{name}” is compressed, but damaged; save it again as plain SVG.</source>
   <translation>„{name}“ ist gepackt, aber beschädigt; speichern Sie die Datei als einfaches SVG.</translation>
  </message>
  <message>
   <source>holds more than {most} elements; save only the outlines you need</source>
   <translation>enthält mehr als {most} Elemente; speichern Sie nur die Umrisse, die Sie brauchen</translation>
  </message>
  <message>
   <source>nests elements more than {most} deep; ungroup and save it again</source>
   <translation>verschachtelt Elemente mehr als {most} tief; lösen Sie die Gruppen auf und speichern Sie neu</translation>
  </message>
  <message>
   <source>“{name}” declares XML entities or refers to other files, which is not safe to open; save it again as plain SVG.</source>
   <translation>„{name}“ erklärt XML-Entitäten oder verweist auf andere Dateien, was nicht sicher zu öffnen ist; speichern Sie die Datei als einfaches SVG.</translation>
  </message>
  <message>
   <source>Convert the text to paths in the drawing program and save again.</source>
   <translation>Wandeln Sie den Text im Zeichenprogramm in Pfade um und speichern Sie neu.</translation>
  </message>
  <message>
   <source>Trace the picture in the drawing program, or draw the outline again as a path.</source>
   <translation>Zeichnen Sie das Bild im Zeichenprogramm nach, oder zeichnen Sie den Umriss neu als Pfad.</translation>
  </message>
  <message>
   <source>Draw it with SVG shapes; other content cannot be cut.</source>
   <translation>Zeichnen Sie es mit SVG-Formen; anderer Inhalt lässt sich nicht schneiden.</translation>
  </message>
  <message>
   <source>Cut the shape with a path operation in the drawing program; it is shown whole here.</source>
   <translation>Beschneiden Sie die Form im Zeichenprogramm mit einer Pfadoperation; hier wird sie ganz gezeigt.</translation>
  </message>
  <message>
   <source>Remove the effect in the drawing program; the plain shape is shown here.</source>
   <translation>Entfernen Sie den Effekt im Zeichenprogramm; hier wird die einfache Form gezeigt.</translation>
  </message>
  <message>
   <source>The whole shape counts as filled; convert the pattern to paths if it matters.</source>
   <translation>Die ganze Form gilt als gefüllt; wandeln Sie das Muster in Pfade um, wenn es darauf ankommt.</translation>
  </message>
  <message>
   <source>The whole shape counts as filled; nothing to do unless parts should be left out.</source>
   <translation>Die ganze Form gilt als gefüllt; nichts zu tun, außer Teile sollen wegbleiben.</translation>
  </message>
  <message>
   <source>Convert the line with its arrowheads to paths if they should be cut.</source>
   <translation>Wandeln Sie die Linie mit ihren Pfeilspitzen in Pfade um, wenn sie geschnitten werden sollen.</translation>
  </message>
  <message>
   <source>Scripts are never run; save the drawing as it should look.</source>
   <translation>Skripte werden nie ausgeführt; speichern Sie die Zeichnung so, wie sie aussehen soll.</translation>
  </message>
  <message>
   <source>The drawing is read as it is before any movement.</source>
   <translation>Die Zeichnung wird gelesen, wie sie vor jeder Bewegung ist.</translation>
  </message>
  <message>
   <source>Draw it again, or correct the path data.</source>
   <translation>Zeichnen Sie es neu, oder berichtigen Sie die Pfaddaten.</translation>
  </message>
  <message>
   <source>Correct the transform; the element is shown without it.</source>
   <translation>Berichtigen Sie die Transformation; das Element wird ohne sie gezeigt.</translation>
  </message>
  <message>
   <source>Nothing to do, or delete it.</source>
   <translation>Nichts zu tun, oder löschen Sie es.</translation>
  </message>
  <message>
   <source>Delete it, or move it back near the drawing.</source>
   <translation>Löschen Sie es, oder rücken Sie es zur Zeichnung zurück.</translation>
  </message>
  <message>
   <source>Draw the missing part again, or delete the reference.</source>
   <translation>Zeichnen Sie das fehlende Teil neu, oder löschen Sie den Verweis.</translation>
  </message>
  <message>
   <source>Put the part into this file; other files and addresses are never opened.</source>
   <translation>Nehmen Sie das Teil in diese Datei auf; andere Dateien und Adressen werden nie geöffnet.</translation>
  </message>
  <message>
   <source>Delete the reference that leads back to itself.</source>
   <translation>Löschen Sie den Verweis, der auf sich selbst zurückführt.</translation>
  </message>
  <message>
   <source>Check that the drawing looks right; else save it with plain attributes.</source>
   <translation>Prüfen Sie, ob die Zeichnung richtig aussieht; sonst speichern Sie sie mit einfachen Attributen.</translation>
  </message>
  <message>
   <source>Check that nothing is missing; else convert it to paths.</source>
   <translation>Prüfen Sie, ob nichts fehlt; sonst wandeln Sie es in Pfade um.</translation>
  </message>
  <message>
   <source>Show it in the drawing program and save again if it should be cut.</source>
   <translation>Blenden Sie es im Zeichenprogramm ein und speichern Sie neu, wenn es geschnitten werden soll.</translation>
  </message>
  <message>
   <source>Check the size; lengths in em and ex were taken for a font of 16 px.</source>
   <translation>Prüfen Sie die Größe; für Längen in em und ex gilt hier eine Schrift von 16 px.</translation>
  </message>
  <message>
   <source>Check the size of the drawing.</source>
   <translation>Prüfen Sie die Größe der Zeichnung.</translation>
  </message>
  <message>
   <source>Move it onto the page, or delete it, if it was not meant to be there.</source>
   <translation>Rücken Sie es auf die Seite, oder löschen Sie es, wenn es dort nicht hingehört.</translation>
  </message>
  <message>
   <source>Nothing to do; the drawing offers another form for this reader.</source>
   <translation>Nichts zu tun; die Zeichnung bietet für dieses Programm eine andere Form an.</translation>
  </message>
  <message>
   <source>{more} more of this kind.</source>
   <translation>{more} weitere dieser Art.</translation>
  </message>
  <message>
   <source>The viewBox of the drawing is broken and was left out.</source>
   <translation>Die viewBox der Zeichnung ist fehlerhaft und wurde weggelassen.</translation>
  </message>
  <message>
   <source>The viewBox does not fit the size of the drawing and was left out.</source>
   <translation>Die viewBox passt nicht zur Größe der Zeichnung und wurde weggelassen.</translation>
  </message>
  <message>
   <source>The transform of the whole drawing is broken.</source>
   <translation>Die Transformation der ganzen Zeichnung ist fehlerhaft.</translation>
  </message>
  <message>
   <source>The {name} of the drawing, “{text}”, is no size and was left out.</source>
   <translation>Die {name} der Zeichnung, „{text}“, ist keine Größe und wurde weggelassen.</translation>
  </message>
  <message>
   <source>The {name} of the drawing is given in {unit}.</source>
   <translation>Die {name} der Zeichnung ist in {unit} angegeben.</translation>
  </message>
  <message>
   <source>One path of the drawing has more than {most} pieces (a curve counts as three); simplify it in the drawing program and save it again.</source>
   <translation>Ein Pfad der Zeichnung hat mehr als {most} Stücke (eine Kurve zählt als drei); vereinfachen Sie ihn im Zeichenprogramm und speichern Sie neu.</translation>
  </message>
  <message>
   <source>The file states no physical size. As it is now, 1 px = 1/96 in: {now}; 1 unit = 1 mm: {mm}; 1 unit = 1 in: {inch}.</source>
   <translation>Die Datei nennt keine Größe in Längeneinheiten. Wie sie jetzt ist, 1 px = 1/96 in: {now}; 1 Einheit = 1 mm: {mm}; 1 Einheit = 1 in: {inch}.</translation>
  </message>
  <message>
   <source>{hidden} elements are hidden or painted with nothing; they were left out.</source>
   <translation>Verborgene oder mit nichts gemalte Elemente wurden weggelassen: {hidden}.</translation>
  </message>
  <message>
   <source>“{name}” only defines symbols and places none; open the drawing that uses them.</source>
   <translation>„{name}“ erklärt nur Symbole und setzt keines ein; öffnen Sie die Zeichnung, die sie verwendet.</translation>
  </message>
  <message>
   <source>A shape without a name</source>
   <translation>Eine Form ohne Namen</translation>
  </message>
  <message>
   <source>{name} lies outside of the page; it was kept.</source>
   <translation>{name} liegt außerhalb der Seite und wurde behalten.</translation>
  </message>
  <message>
   <source>has broken path data at character {number}{near}; it is drawn up to there</source>
   <translation>hat ab Zeichen {number}{near} fehlerhafte Pfaddaten; gezeichnet wird bis dahin</translation>
  </message>
  <message>
   <source>has a broken list of points; the whole pairs in it are drawn</source>
   <translation>hat eine fehlerhafte Punktliste; gezeichnet werden die ganzen Paare darin</translation>
  </message>
  <message>
   <source>has a negative size</source>
   <translation>hat eine negative Größe</translation>
  </message>
  <message>
   <source>has a size of zero</source>
   <translation>hat die Größe null</translation>
  </message>
  <message>
   <source>has no path data</source>
   <translation>hat keine Pfaddaten</translation>
  </message>
  <message>
   <source>has a {name} that is no length, “{text}”</source>
   <translation>hat in {name} keine Länge: „{text}“</translation>
  </message>
  <message>
   <source>only moves the pen</source>
   <translation>bewegt nur den Stift</translation>
  </message>
  <message>
   <source> (“{text}”)</source>
   <translation> („{text}“)</translation>
  </message>
  <message>
   <source>has no points</source>
   <translation>hat keine Punkte</translation>
  </message>
  <message>
   <source>has a point that is not a number</source>
   <translation>hat einen Punkt, der keine Zahl ist</translation>
  </message>
  <message>
   <source>is text, which has no outline of its own; it was left out</source>
   <translation>ist Text, der keinen eigenen Umriss hat; er wurde weggelassen</translation>
  </message>
  <message>
   <source>is a picture; it was left out</source>
   <translation>ist ein Bild; es wurde weggelassen</translation>
  </message>
  <message>
   <source>holds content that is not SVG; it was left out</source>
   <translation>enthält Inhalt, der kein SVG ist; er wurde weggelassen</translation>
  </message>
  <message>
   <source>“{name}” {why}; save only the outlines you need.</source>
   <translation>„{name}“ {why}; speichern Sie nur die Umrisse, die Sie brauchen.</translation>
  </message>
  <message>
   <source>{label} reaches further than {most} m; it was left out.</source>
   <translation>{label} reicht weiter als {most} m; es wurde weggelassen.</translation>
  </message>
  <message>
   <source>{label} refers to “{href}”, which is not in the file; it was left out.</source>
   <translation>{label} verweist auf „{href}“, das nicht in der Datei ist; es wurde weggelassen.</translation>
  </message>
  <message>
   <source>draws more than {most} elements once its references are followed</source>
   <translation>zeichnet mehr als {most} Elemente, wenn man den Verweisen folgt</translation>
  </message>
  <message>
   <source>The style rule “{selector}” is not understood here.</source>
   <translation>Die Stilregel „{selector}“ wird hier nicht verstanden.</translation>
  </message>
  <message>
   <source>{label} asks for what this reader does not offer.</source>
   <translation>{label} verlangt, was dieses Programm nicht bietet.</translation>
  </message>
  <message>
   <source>{label} leads back to itself; it was left out.</source>
   <translation>{label} führt auf sich selbst zurück; es wurde weggelassen.</translation>
  </message>
  <message>
   <source>{label} has a size of zero; nothing in it shows.</source>
   <translation>{label} hat die Größe null; nichts darin ist zu sehen.</translation>
  </message>
  <message>
   <source>which is not in the file</source>
   <translation>, der nicht in der Datei ist</translation>
  </message>
  <message>
   <source>in a form that is not read here</source>
   <translation> in einer Form, die hier nicht gelesen wird</translation>
  </message>
  <message>
   <source>{label} has a clip path {why}.</source>
   <translation>{label} hat einen Beschneidungspfad{why}.</translation>
  </message>
  <message>
   <source>{label} clips itself; it was left out.</source>
   <translation>{label} beschneidet sich selbst; es wurde weggelassen.</translation>
  </message>
  <message>
   <source>{label} has a broken transform “{text}”.</source>
   <translation>{label} hat eine fehlerhafte Transformation „{text}“.</translation>
  </message>
  <message>
   <source>{label} is flattened to nothing by its transform.</source>
   <translation>{label} wird von seiner Transformation zu nichts zusammengedrückt.</translation>
  </message>
  <message>
   <source>refers to “{href}” outside of this file</source>
   <translation>verweist auf „{href}“ außerhalb dieser Datei</translation>
  </message>
  <message>
   <source>refers to nothing</source>
   <translation>verweist auf nichts</translation>
  </message>
  <message>
   <source>{label} {why}; it was left out.</source>
   <translation>{label} {why}; es wurde weggelassen.</translation>
  </message>
  <message>
   <source>nests elements and references more than {most} deep</source>
   <translation>verschachtelt Elemente und Verweise mehr als {most} tief</translation>
  </message>
  <message>
   <source>has more than {vertices} vertices or {curves} curves</source>
   <translation>hat mehr als {vertices} Eckpunkte oder {curves} Kurven</translation>
  </message>
  <message>
   <source>{label} was not run.</source>
   <translation>{label} wurde nicht ausgeführt.</translation>
  </message>
  <message>
   <source>is not an element of SVG; it was left out</source>
   <translation>ist kein Element von SVG; es wurde weggelassen</translation>
  </message>
  <message>
   <source>{label} was not played.</source>
   <translation>{label} wurde nicht abgespielt.</translation>
  </message>
  <message>
   <source>{name} was written but {why}, so it was removed; export again, or in the other file format.</source>
   <translation>{name} wurde geschrieben und wieder entfernt, denn {why}; schreiben Sie noch einmal, oder im anderen Dateiformat.</translation>
  </message>
  <message>
   <source>it does not say that its unit is the millimetre</source>
   <translation>die Datei nennt als Einheit nicht den Millimeter</translation>
  </message>
  <message>
   <source>its layers differ from what was meant ({odd})</source>
   <translation>ihre Ebenen weichen vom Gemeinten ab ({odd})</translation>
  </message>
  <message>
   <source>layer {layer} holds {count} contours instead of {wanted}</source>
   <translation>Ebene {layer} enthält {count} Umrisse statt {wanted}</translation>
  </message>
  <message>
   <source>it cannot be read back ({error})</source>
   <translation>sie ließ sich nicht zurücklesen ({error})</translation>
  </message>
  <message>
   <source>an outline of layer {layer} is off by {off} in it</source>
   <translation>ein Umriss der Ebene {layer} liegt darin um {off} daneben</translation>
  </message>
  <message>
   <source>a contour of layer {layer} is open in it</source>
   <translation>ein Umriss der Ebene {layer} ist darin offen</translation>
  </message>
  <message>
   <source>a contour of layer {layer} is closed in it</source>
   <translation>ein Umriss der Ebene {layer} ist darin geschlossen</translation>
  </message>
  <message>
   <source>{name} is only {size}, at {place}.</source>
   <translation>{name} misst nur {size}, bei {place}.</translation>
  </message>
  <message>
   <source>Leave it out, or delete it, if it is a leftover.</source>
   <translation>Lassen Sie ihn weg, oder löschen Sie ihn, wenn er ein Überbleibsel ist.</translation>
  </message>
  <message>
   <source>{name} crosses itself{where}; it was taken as {areas} by the even-odd rule.</source>
   <translation>{name} überschneidet sich{where}; nach der Gerade-Ungerade-Regel wurde er zu {areas}.</translation>
  </message>
  <message>
   <source>Check the shape, or draw it again without the crossing.</source>
   <translation>Prüfen Sie die Form, oder zeichnen Sie sie neu ohne die Überschneidung.</translation>
  </message>
  <message>
   <source> at {place}</source>
   <translation> bei {place}</translation>
  </message>
  <message>
   <source>{name} crosses itself or others more than {most} times; it was left out.</source>
   <translation>{name} überschneidet sich selbst oder andere mehr als {most}-mal und wurde weggelassen.</translation>
  </message>
  <message>
   <source>Save only the outline as a file of its own.</source>
   <translation>Speichern Sie nur den Umriss als eigene Datei.</translation>
  </message>
  <message>
   <source>{what}{where}; it was left out.</source>
   <translation>{what}{where}; er wurde weggelassen.</translation>
  </message>
  <message>
   <source>The drawing is {size}, larger than ten metres.</source>
   <translation>Die Zeichnung misst {size}, mehr als zehn Meter.</translation>
  </message>
  <message>
   <source>The drawing is only {size}.</source>
   <translation>Die Zeichnung misst nur {size}.</translation>
  </message>
  <message>
   <source>{name} crosses itself{where} and encloses nothing.</source>
   <translation>{name} überschneidet sich{where} und umschließt nichts.</translation>
  </message>
  <message>
   <source>Draw it again without the crossing.</source>
   <translation>Zeichnen Sie ihn neu ohne die Überschneidung.</translation>
  </message>
  <message>
   <source>Check its unit.</source>
   <translation>Prüfen Sie die Einheit.</translation>
  </message>
  <message>
   <source>{name} has a point that is not a number</source>
   <translation>{name} hat einen Punkt, der keine Zahl ist</translation>
  </message>
  <message>
   <source>{name} encloses nothing</source>
   <translation>{name} umschließt nichts</translation>
  </message>
  <message>
   <source>{side} per side ({overall} overall)</source>
   <translation>{side} je Seite ({overall} gesamt)</translation>
  </message>
  <message>
   <source>The work was stopped; nothing was changed.</source>
   <translation>Die Arbeit wurde angehalten; nichts wurde geändert.</translation>
  </message>
  <message>
   <source>“{text}” {complaint}.</source>
   <translation>„{text}“ {complaint}.</translation>
  </message>
  <message>
   <source>“{text}” means a thousandth of an inch to some and a millimetre to others; write thou or mm.</source>
   <translation>„{text}“ heißt für manche ein Tausendstel Zoll, für andere ein Millimeter; schreiben Sie thou oder mm.</translation>
  </message>
  <message>
   <source>“{text}” is not a unit known here; use mm, cm, m, µm, in, ft, thou, tenths or px.</source>
   <translation>„{text}“ ist hier als Einheit unbekannt; nehmen Sie mm, cm, m, µm, in, ft, thou, tenths oder px.</translation>
  </message>
  <message>
   <source>has a unit without a number; type the number in front of it, such as 0.05 mm</source>
   <translation>hat eine Einheit ohne Zahl; schreiben Sie die Zahl davor, etwa 0.05 mm</translation>
  </message>
  <message>
   <source>is too long to be a length; type a number and a unit, such as 0.05 mm</source>
   <translation>ist zu lang für eine Länge; geben Sie Zahl und Einheit ein, etwa 0.05 mm</translation>
  </message>
  <message>
   <source>No length was given; type a number and a unit, such as 0.05 mm.</source>
   <translation>Es wurde keine Länge eingegeben; geben Sie Zahl und Einheit ein, etwa 0.05 mm.</translation>
  </message>
  <message>
   <source>is longer than a kilometre; check the number and its unit</source>
   <translation>ist länger als ein Kilometer; prüfen Sie die Zahl und ihre Einheit</translation>
  </message>
  <message>
   <source>holds two lengths side by side; put + or - between them</source>
   <translation>enthält zwei Längen nebeneinander; setzen Sie + oder - dazwischen</translation>
  </message>
  <message>
   <source>has two units behind one number; keep one of them</source>
   <translation>hat zwei Einheiten hinter einer Zahl; lassen Sie nur eine stehen</translation>
  </message>
  <message>
   <source>divides a length; type the result, or a fraction of whole numbers such as 1/8 in</source>
   <translation>teilt eine Länge; geben Sie das Ergebnis ein, oder einen Bruch aus ganzen Zahlen wie 1/8 in</translation>
  </message>
  <message>
   <source>has a unit on some of its numbers only; give every number its unit</source>
   <translation>hat nur bei manchen Zahlen eine Einheit; geben Sie jeder Zahl ihre Einheit</translation>
  </message>
  <message>
   <source>holds two numbers side by side; use one decimal mark, or put + or - between them</source>
   <translation>enthält zwei Zahlen nebeneinander; nehmen Sie ein einziges Dezimalzeichen, oder setzen Sie + oder - dazwischen</translation>
  </message>
  <message>
   <source>can be read as a sum or as a mixed number; write 1 1/2 in, or 1 in - 1/2 in</source>
   <translation>lässt sich als Summe oder als gemischte Zahl lesen; schreiben Sie 1 1/2 in, oder 1 in - 1/2 in</translation>
  </message>
  <message>
   <source>has no whole number behind the fraction bar; type one, such as 1/8 in</source>
   <translation>hat keine ganze Zahl hinter dem Bruchstrich; geben Sie eine ein, etwa 1/8 in</translation>
  </message>
  <message>
   <source>divides by zero; type a fraction such as 1/8 in</source>
   <translation>teilt durch null; geben Sie einen Bruch wie 1/8 in ein</translation>
  </message>
  <message>
   <source>has a fraction of numbers that are not whole; type a decimal, or a fraction such as 1/8</source>
   <translation>hat einen Bruch aus Zahlen, die nicht ganz sind; geben Sie eine Dezimalzahl ein, oder einen Bruch wie 1/8</translation>
  </message>
  <message>
   <source>has more than one decimal mark; leave out the marks between thousands</source>
   <translation>hat mehr als ein Dezimalzeichen; lassen Sie die Zeichen zwischen den Tausendern weg</translation>
  </message>
  <message>
   <source>has a comma that may mean thousands or a decimal; write {point} or {whole}</source>
   <translation>hat ein Komma, das Tausender oder Dezimalen meinen kann; schreiben Sie {point} oder {whole}</translation>
  </message>
  <message>
   <source>has an exponent that no length needs; check it, or type the number out</source>
   <translation>hat eine Zehnerpotenz, die keine Länge braucht; prüfen Sie sie, oder schreiben Sie die Zahl aus</translation>
  </message>
  <message>
   <source>ends with + or -; type the length that follows, or remove the sign</source>
   <translation>endet mit + oder -; geben Sie die Länge ein, die folgt, oder entfernen Sie das Vorzeichen</translation>
  </message>
  <message>
   <source>has two signs in a row; keep one of them</source>
   <translation>hat zwei Vorzeichen hintereinander; lassen Sie nur eines stehen</translation>
  </message>
  <message>
   <source>has no whole number in front of the fraction bar; type one, such as 1/8 in</source>
   <translation>hat keine ganze Zahl vor dem Bruchstrich; geben Sie eine ein, etwa 1/8 in</translation>
  </message>
  <message>
   <source>is not a finite number; type a length such as 0.05 mm</source>
   <translation>ist keine endliche Zahl; geben Sie eine Länge wie 0.05 mm ein</translation>
  </message>
  <message>
   <source>“{text}”</source>
   <translation>„{text}“</translation>
  </message>
  <message>
   <source>an invisible character</source>
   <translation>ein unsichtbares Zeichen</translation>
  </message>
  <message>
   <source>holds {culprit}, which has no meaning in a length; remove it</source>
   <translation>enthält {culprit}, was in einer Länge nichts bedeutet; entfernen Sie es</translation>
  </message>
  <message>
   <source>has a whole number in front of a fraction that is not less than one; type it as a decimal or as one fraction</source>
   <translation>hat eine ganze Zahl vor einem Bruch, der nicht kleiner als eins ist; geben Sie eine Dezimalzahl ein, oder einen einzigen Bruch</translation>
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
  <name>Documents</name>
  <message>
   <source>Outline of the plug</source>
   <translation>Umriss der Einlage</translation>
  </message>
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
  <name>export</name>
  <message>
   <source>{0}: {1} points became {2} arcs and {3} lines, off by {4} µm at most</source>
   <translation>{0}: aus {1} Punkten wurden {2} Bögen und {3} Strecken, höchstens {4} µm daneben</translation>
  </message>
 </context>
 <context>
  <name>Exporter</name>
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
 </context>
 <context>
  <name>Opener</name>
  <message>
   <source>The file could not be read ({0}); please report it with the file.</source>
   <translation>Die Datei ließ sich nicht lesen ({0}); bitte melden Sie das mitsamt der Datei.</translation>
  </message>
 </context>
 <context>
  <name>reading</name>
  <message>
   <source>The drawing is not there any more; open it again to read it in another way.</source>
   <translation>Die Zeichnung ist nicht mehr da; öffnen Sie sie wieder, um sie anders zu lesen.</translation>
  </message>
  <message>
   <source>The drawing could not be looked at ({0}); open it again.</source>
   <translation>Die Zeichnung ließ sich nicht ansehen ({0}); öffnen Sie sie wieder.</translation>
  </message>
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
 </context>
 <context>
  <name>MapLink</name>
  <message>
   <source>at the place of the check</source>
   <translation>am Ort der Prüfung</translation>
  </message>
  <message>
   <source>Spot {0} of {1}: {2}</source>
   <translation>Stelle {0} von {1}: {2}</translation>
  </message>
  <message>
   <source>The gap is even all round, {0}; no place is tighter.</source>
   <translation>Der Spalt ist ringsum gleich, {0}; keine Stelle ist enger.</translation>
  </message>
  <message>
   <source>No other place stands out; the tightest has {0}.</source>
   <translation>Keine andere Stelle fällt auf; die engste hat {0}.</translation>
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
  <name>menus</name>
  <message>
   <source>Open rece&amp;nt</source>
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
   <source>Colou&amp;rs</source>
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
   <source>On the stack</source>
   <translation>Im Aufbau</translation>
  </message>
  <message>
   <source>In the list of outlines</source>
   <translation>In der Liste der Umrisse</translation>
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
   <source>Where both halves are made, choose the plug's outline beside the map. It is laid where it sits best; the checks say what to take off, and where.</source>
   <translation>Wo beide Hälften gefertigt sind, wählen Sie den Umriss der Einlage neben der Karte. Sie wird gelegt, wo sie am besten sitzt; die Prüfungen sagen, was wo wegzunehmen ist.</translation>
  </message>
  <message>
   <source>On the page “Workshop”, type what your machine gets wrong: it says how many parts come out as wanted, and when to stop adjusting.</source>
   <translation>Auf der Seite „Werkstatt“ tippen Sie ein, was Ihre Maschine falsch macht: sie sagt, wie viele Teile werden wie gewollt, und wann nicht weiter nachzustellen ist.</translation>
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
   <translation>Zu schneiden, geschnitten, fertig: nur eine Hälfte, die noch zu schneiden ist, darf sich ändern.</translation>
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
   <source>cutter</source>
   <translation>Fräser</translation>
  </message>
  <message>
   <source>As cut: drawn (dashed), reached (light), left over (dark)</source>
   <translation>Wie geschnitten: erreicht hell, übrig dunkel</translation>
  </message>
  <message>
   <source>Target T, and Z: where a plug cut to T would bind</source>
   <translation>Ziel T, und Z: wo eine Einlage wie T klemmen würde</translation>
  </message>
  <message>
   <source>Rounded: both walls match, the gap is c</source>
   <translation>Gerundet: beide Wände gleich, der Spalt ist c</translation>
  </message>
  <message>
   <source>Dog-bone in both halves</source>
   <translation>Knochen in beiden Hälften</translation>
  </message>
  <message>
   <source>next tight spot</source>
   <translation>nächste enge Stelle</translation>
  </message>
  <message>
   <source>Shift+N</source>
   <translation>Umschalt+N</translation>
  </message>
  <message>
   <source>previous tight spot</source>
   <translation>vorige enge Stelle</translation>
  </message>
  <message>
   <source>+ −</source>
   <translation>+ −</translation>
  </message>
  <message>
   <source>zoom about the middle</source>
   <translation>um die Mitte zoomen</translation>
  </message>
  <message>
   <source>arrows</source>
   <translation>Pfeiltasten</translation>
  </message>
  <message>
   <source>move the map</source>
   <translation>Karte bewegen</translation>
  </message>
  <message>
   <source>Home</source>
   <translation>Pos1</translation>
  </message>
  <message>
   <source>fit to view</source>
   <translation>alles zeigen</translation>
  </message>
  <message>
   <source>measure between two points: move by arrows, set each by Enter</source>
   <translation>zwischen zwei Punkten messen: mit Pfeiltasten bewegen, jeden mit Eingabe setzen</translation>
  </message>
  <message>
   <source>Space and drag</source>
   <translation>Leertaste und ziehen</translation>
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
   <source>Shift and arrows</source>
   <translation>Umschalt und Pfeiltasten</translation>
  </message>
  <message>
   <source>10 micrometres</source>
   <translation>10 Mikrometer</translation>
  </message>
  <message>
   <source>Page Up, Page Down</source>
   <translation>Bild auf, Bild ab</translation>
  </message>
  <message>
   <source>50 micrometres</source>
   <translation>50 Mikrometer</translation>
  </message>
  <message>
   <source>Esc</source>
   <translation>Esc</translation>
  </message>
  <message>
   <source>back to where the drag began</source>
   <translation>zurück zum Anfang des Ziehens</translation>
  </message>
  <message>
   <source>Left, Right</source>
   <translation>Links, Rechts</translation>
  </message>
  <message>
   <source>take hold of another face</source>
   <translation>eine andere Fläche fassen</translation>
  </message>
  <message>
   <source>Up, Down</source>
   <translation>Auf, Ab</translation>
  </message>
  <message>
   <source>move it by 0.01 mm</source>
   <translation>sie um 0.01 mm bewegen</translation>
  </message>
  <message>
   <source>move it by 0.1 mm</source>
   <translation>sie um 0.1 mm bewegen</translation>
  </message>
  <message>
   <source>Enter</source>
   <translation>Eingabe</translation>
  </message>
  <message>
   <source>type its height</source>
   <translation>ihre Höhe eintippen</translation>
  </message>
  <message>
   <source>Space, arrows</source>
   <translation>Leertaste, Pfeiltasten</translation>
  </message>
  <message>
   <source>choose one outline</source>
   <translation>einen Umriss wählen</translation>
  </message>
  <message>
   <source>choose several that follow each other</source>
   <translation>mehrere aufeinanderfolgende wählen</translation>
  </message>
  <message>
   <source>Ctrl and arrows, Ctrl+Space</source>
   <translation>Strg und Pfeiltasten, Strg+Leertaste</translation>
  </message>
  <message>
   <source>go to another one, and add it or take it out</source>
   <translation>zu einem anderen gehen und ihn dazunehmen oder herausnehmen</translation>
  </message>
  <message>
   <source>give it another name</source>
   <translation>ihm einen anderen Namen geben</translation>
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
   <source>No project file holds the last changes. Without saving, they are gone.</source>
   <translation>Die letzten Änderungen stehen in keiner Projektdatei. Ohne Sichern sind sie weg.</translation>
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
   <source>The program ended without closing. No project file holds this work.</source>
   <translation>Das Programm endete, ohne zu schließen. Keine Projektdatei enthält diese Arbeit.</translation>
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
   <translation>Lose Enden, die so nahe liegen, werden eins. 0.01 mm ist weniger, als ein Fräser zeigt.</translation>
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
  <message>
   <source>not given</source>
   <translation>keine Angabe</translation>
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
   <source>&amp;Add a station</source>
   <translation>Messstelle &amp;hinzufügen</translation>
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
  <message>
   <source>Fit to it as &amp;drawn</source>
   <translation>Wie &amp;gezeichnet einpassen</translation>
  </message>
  <message>
   <source>Leaves the readings out, and forgets them.</source>
   <translation>Lässt die Messwerte weg und vergisst sie.</translation>
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
  <name>coating</name>
  <message>
   <source>Coating</source>
   <translation>Beschichtung</translation>
  </message>
  <message>
   <source>What paint, lacquer or anodising adds to each face, after depth and thickness were measured.</source>
   <translation>Was Farbe, Lack oder Eloxal auf jeder Fläche aufträgt, nachdem Tiefe und Dicke gemessen wurden.</translation>
  </message>
  <message>
   <source>&amp;Host</source>
   <translation>&amp;Träger</translation>
  </message>
  <message>
   <source>&amp;Plug</source>
   <translation>&amp;Einlage</translation>
  </message>
  <message>
   <source>Coating of the {0}</source>
   <translation>Beschichtung: {0}</translation>
  </message>
  <message>
   <source>not coated</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>Bare, or measured as coated.</source>
   <translation>Blank, oder beschichtet gemessen.</translation>
  </message>
  <message>
   <source>&amp;face</source>
   <translation>Ober&amp;fläche</translation>
  </message>
  <message>
   <source>fl&amp;oor</source>
   <translation>&amp;Grund</translation>
  </message>
  <message>
   <source>&amp;walls</source>
   <translation>&amp;Wände</translation>
  </message>
  <message>
   <source>&amp;upper face</source>
   <translation>&amp;Oberseite</translation>
  </message>
  <message>
   <source>&amp;lower face</source>
   <translation>&amp;Unterseite</translation>
  </message>
  <message>
   <source>w&amp;alls</source>
   <translation>Wän&amp;de</translation>
  </message>
  <message>
   <source>By how much each coated face grows. Depth, thickness and clearance are those before it.</source>
   <translation>Um so viel wächst jede beschichtete Fläche. Tiefe, Dicke und Spiel gelten davor.</translation>
  </message>
  <message>
   <source>nothing coated</source>
   <translation>nichts beschichtet</translation>
  </message>
  <message>
   <source>host coated {0}</source>
   <translation>Träger beschichtet {0}</translation>
  </message>
  <message>
   <source>plug coated {0}</source>
   <translation>Einlage beschichtet {0}</translation>
  </message>
  <message>
   <source>coated: host {0}, plug {1}</source>
   <translation>beschichtet: Träger {0}, Einlage {1}</translation>
  </message>
  <message>
   <source>coated {0}</source>
   <translation>beschichtet {0}</translation>
  </message>
  <message>
   <source>bare</source>
   <translation>blank</translation>
  </message>
  <message>
   <source>Coated: {0} per side ({1} overall) left at the walls.</source>
   <translation>Beschichtet bleiben {0} je Seite ({1} gesamt).</translation>
  </message>
  <message>
   <source>Coated: bites by {0} per side ({1} overall).</source>
   <translation>Beschichtet klemmt es um {0} je Seite ({1} gesamt).</translation>
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
   <translation>Bei&amp;spiel ansehen</translation>
  </message>
  <message>
   <source>&amp;Pocket by size</source>
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
   <source>The whole job is the sentence above. Once an outline is open, every part of it can be changed.</source>
   <translation>Der ganze Auftrag ist der Satz oben. Sobald ein Umriss offen ist, lässt sich jeder Teil davon ändern.</translation>
  </message>
  <message>
   <source>About the sentence</source>
   <translation>Zum Satz oben</translation>
  </message>
  <message>
   <source>A leaf fitted into a disc, with one check left open on purpose. Change anything; undo takes it all back.</source>
   <translation>Ein Blatt, in eine Scheibe eingepasst; eine Prüfung ist mit Absicht offen. Ändern Sie alles; Rückgängig nimmt es zurück.</translation>
  </message>
  <message>
   <source>About the sample</source>
   <translation>Zum Beispiel</translation>
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
  <message>
   <source>Bring it back</source>
   <translation>Zurückholen</translation>
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
  <message>
   <source>made plug, {0}</source>
   <translation>gefertigte Einlage, {0}</translation>
  </message>
 </context>
 <context>
  <name>outlines</name>
  <message>
   <source>1 hole</source>
   <translation>1 Loch</translation>
  </message>
  <message>
   <source>{0} holes</source>
   <translation>{0} Löcher</translation>
  </message>
  <message>
   <source>layer {0}</source>
   <translation>Ebene {0}</translation>
  </message>
 </context>
 <context>
  <name>PartsView</name>
  <message>
   <source>Share of parts with the wanted feel</source>
   <translation>Anteil der Teile mit dem gewünschten Sitz</translation>
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
   <translation>{0} % der Teile sitzen wie gewünscht: {1}.</translation>
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
   <source>Zones are a place to start, not a promise.</source>
   <translation>Die Zonen sind ein Anfang, kein Versprechen.</translation>
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
   <source>{0} of {1}</source>
   <translation>{0} aus {1}</translation>
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
   <source>Plug</source>
   <translation>Einlage</translation>
  </message>
  <message>
   <source>Pocket</source>
   <translation>Tasche</translation>
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
   <source>What it is called and made of, as the sentence says it.</source>
   <translation>Wie sie heißt und woraus sie ist, so wie der Satz es sagt.</translation>
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
   <source>Its measured diameter: an error here costs its full amount per side.</source>
   <translation>Sein gemessener Durchmesser: ein Fehler geht je Seite voll ein.</translation>
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
Geben Sie ein: 0.05, 2 thou, 1/64 in …</translation>
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
   <source>&amp;Leave on the wall</source>
   <translation>An der Wand &amp;lassen</translation>
  </message>
  <message>
   <source>Stock that roughing leaves on both walls for the finishing pass; 0 for none.</source>
   <translation>Was das Schruppen an beiden Wänden für den Schlichtgang stehen lässt; 0 für nichts.</translation>
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
   <source>Seat</source>
   <translation>Höhe</translation>
  </message>
  <message>
   <source>How far above the host face the plug shall end; negative is below.</source>
   <translation>Wie weit die Einlage über der Trägerfläche enden soll; negativ ist darunter.</translation>
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
   <source>Under the plug</source>
   <translation>Unter der Einlage</translation>
  </message>
  <message>
   <source>Tape or glue under it, as thick as it ends up.</source>
   <translation>Klebeband oder Kleber darunter, so dick wie am Ende.</translation>
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
 </context>
 <context>
  <name>SentencePreview</name>
  <message>
   <source>Fit sentence</source>
   <translation>Passsatz</translation>
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
   <source>Numbers</source>
   <translation>Zahlen</translation>
  </message>
  <message>
   <source>Numbers of the stack</source>
   <translation>Zahlen des Aufbaus</translation>
  </message>
  <message>
   <source>Boxes to type depth and thickness, and how much their readings vary.</source>
   <translation>Felder für Tiefe und Dicke, und wie sehr deren Messwerte schwanken.</translation>
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
   <translation>Rund, geht aber nicht in jeder Drehung hinein: Einlage und Tasche anzeichnen.</translation>
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
   <translation>Sieht gleich aus: {0}; geht aber nicht jedes Mal hinein: Einlage und Tasche anzeichnen.</translation>
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
   <source>Not given: its diameter counts as exact.</source>
   <translation>Keine Angabe: Sein Durchmesser gilt als genau.</translation>
  </message>
  <message>
   <source>Runout</source>
   <translation>Rundlauffehler</translation>
  </message>
  <message>
   <source>Total reading of a dial gauge on the turning cutter. It cuts wider than it measures.</source>
   <translation>Ganzer Ausschlag einer Messuhr am drehenden Fräser. Er schneidet breiter, als er misst.</translation>
  </message>
  <message>
   <source>Not given: it counts as running true.</source>
   <translation>Keine Angabe: Er gilt als rundlaufend.</translation>
  </message>
  <message>
   <source>Diameter on the label</source>
   <translation>Durchmesser auf dem Schild</translation>
  </message>
  <message>
   <source>What the machine's program reckons with, if that is not the measured diameter.</source>
   <translation>Womit das Programm der Maschine rechnet, wenn das nicht der gemessene Durchmesser ist.</translation>
  </message>
  <message>
   <source>Not given: the program counts as reckoning with the measured diameter.</source>
   <translation>Keine Angabe: Das Programm rechnet, so wird angenommen, mit dem gemessenen Durchmesser.</translation>
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
   <source>Not given: each width counts as coming out alike.</source>
   <translation>Keine Angabe: Jede Breite gilt als gleich gelungen.</translation>
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
   <source>Not given: the stock counts as equally thick everywhere.</source>
   <translation>Keine Angabe: Das Material gilt als überall gleich dick.</translation>
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
   <source>not given</source>
   <translation>keine Angabe</translation>
  </message>
  <message>
   <source>Not given: warmth does not count.</source>
   <translation>Keine Angabe: Wärme zählt nicht.</translation>
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
   <source>Most that one pass takes.</source>
   <translation>So viel nimmt ein Durchgang höchstens.</translation>
  </message>
  <message>
   <source>Not given: the depth is not parted into passes.</source>
   <translation>Keine Angabe: Die Tiefe wird nicht in Durchgänge geteilt.</translation>
  </message>
  <message>
   <source>Left on the floor</source>
   <translation>Am Grund bleibt</translation>
  </message>
  <message>
   <source>Stock that the passes leave on the floor, for a last pass of its own.</source>
   <translation>Material, das die Durchgänge am Grund lassen, für einen eigenen letzten.</translation>
  </message>
  <message>
   <source>Floor fillet</source>
   <translation>Kehle am Grund</translation>
  </message>
  <message>
   <source>Radius that a worn cutter leaves between wall and floor. A sharp edge of the plug rides up on it.</source>
   <translation>Radius, den ein stumpfer Fräser zwischen Wand und Grund lässt. Eine scharfe Kante der Einlage sitzt darauf auf.</translation>
  </message>
  <message>
   <source>Not given: the cutter counts as sharp, and nothing holds the plug up.</source>
   <translation>Keine Angabe: Der Fräser gilt als scharf, und nichts hebt die Einlage an.</translation>
  </message>
  <message>
   <source>Width of the chamfer that lets the plug down over a floor fillet.</source>
   <translation>Breite der Fase, mit der die Einlage über eine Kehle am Grund hinunterkommt.</translation>
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
   <source>Not given: the walls count as upright.</source>
   <translation>Keine Angabe: Die Wände gelten als senkrecht.</translation>
  </message>
  <message>
   <source>Taper of the kerf</source>
   <translation>Schräge der Schnittfuge</translation>
  </message>
  <message>
   <source>The pocket is {depth} deep, at most {pass} a pass, with {floor} left for the floor, and the direction is {milling}. A worn cutter leaves a floor fillet of {fillet}; the plug's lower edge is broken by {edge}. The kerf is wider on the show side by {taper}.</source>
   <translation>Die Tasche ist {depth} tief, höchstens {pass} je Durchgang, {floor} bleiben für den Grund, und die Richtung ist {milling}. Ein stumpfer Fräser lässt eine Kehle am Grund von {fillet}; die Unterkante der Einlage ist um {edge} gebrochen. Die Schnittfuge ist auf der Sichtseite um {taper} breiter.</translation>
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
   <translation>Tippen Sie ein, was die Maschine falsch macht, dann steht hier, wie viele Teile werden wie gewünscht.</translation>
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
   <source>Nothing can be said of many parts yet; see the checks.</source>
   <translation>Über viele Teile lässt sich noch nichts sagen; siehe die Prüfungen.</translation>
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
   <source>Depth of the pocket below the host face. Deeper lets the plug sit lower.</source>
   <translation>Tiefe der Tasche unter der Trägerfläche. Tiefer lässt die Einlage niedriger sitzen.</translation>
  </message>
  <message>
   <source>Tape or glue under the plug, pressed. More of it lifts the plug.</source>
   <translation>Klebeband oder Kleber unter der Einlage, gepresst. Mehr davon hebt die Einlage.</translation>
  </message>
  <message>
   <source>Thickness of the plug. Measure it in several places.</source>
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
   <source>{0} expected, {1} wanted</source>
   <translation>{0} erwartet, {1} gewünscht</translation>
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
   <source>{0}, {1} wanted</source>
   <translation>{0}, gewünscht {1}</translation>
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
   <source>Opening {0}</source>
   <translation>{0} wird geöffnet</translation>
  </message>
  <message>
   <source>The program is not complete ({0}); install it again.</source>
   <translation>Das Programm ist nicht vollständig ({0}); installieren Sie es neu.</translation>
  </message>
  <message>
   <source>The list of recent work is empty now. No file was deleted.</source>
   <translation>Die Liste der letzten Arbeiten ist jetzt leer. Keine Datei wurde gelöscht.</translation>
  </message>
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
  <message>
   <source>d MMMM</source>
   <translation>d. MMMM</translation>
  </message>
  <message>
   <source>d MMMM yyyy</source>
   <translation>d. MMMM yyyy</translation>
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
   <source>No checks yet</source>
   <translation>Noch keine Prüfung</translation>
  </message>
  <message>
   <source>{0} in the way</source>
   <translation>{0} im Weg</translation>
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
   <source>Workshop of new work</source>
   <translation>Werkstatt neuer Arbeit</translation>
  </message>
  <message>
   <source>Cutter known to ±</source>
   <translation>Fräser bekannt auf ±</translation>
  </message>
  <message>
   <source>How well its diameter is measured. Work that is open keeps its own numbers.</source>
   <translation>Wie genau sein Durchmesser gemessen ist. Offene Arbeit behält ihre eigenen Zahlen.</translation>
  </message>
  <message>
   <source>Not given: its diameter counts as exact.</source>
   <translation>Keine Angabe: Sein Durchmesser gilt als genau.</translation>
  </message>
  <message>
   <source>Runout</source>
   <translation>Rundlauf</translation>
  </message>
  <message>
   <source>Total reading of a dial gauge on the turning cutter.</source>
   <translation>Ganzer Ausschlag einer Messuhr am drehenden Fräser.</translation>
  </message>
  <message>
   <source>Not given: it counts as running true.</source>
   <translation>Keine Angabe: Er gilt als rundlaufend.</translation>
  </message>
  <message>
   <source>A width repeats to ±</source>
   <translation>Eine Breite wiederholt sich auf ±</translation>
  </message>
  <message>
   <source>How closely the width of one half comes out again.</source>
   <translation>Wie genau die Breite einer Hälfte wieder gelingt.</translation>
  </message>
  <message>
   <source>Not given: each width counts as coming out alike.</source>
   <translation>Keine Angabe: Jede Breite gilt als gleich gelungen.</translation>
  </message>
  <message>
   <source>Thickness varies by ±</source>
   <translation>Dicke schwankt um ±</translation>
  </message>
  <message>
   <source>That of the stock, from sheet to sheet.</source>
   <translation>Die des Materials, von Platte zu Platte.</translation>
  </message>
  <message>
   <source>Not given: the stock counts as equally thick everywhere.</source>
   <translation>Keine Angabe: Das Material gilt als überall gleich dick.</translation>
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
   <source>high contrast, black</source>
   <translation>hoher Kontrast, schwarz</translation>
  </message>
  <message>
   <source>high contrast, white</source>
   <translation>hoher Kontrast, weiß</translation>
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
