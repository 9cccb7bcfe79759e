/**
 * Legends in the Leiden system: what stands on the coin, what the editor adds, what is lost.
 *
 * <p>The brackets are those agreed at Leiden in 1931 and published in 1932, as S. Dow described them for inscriptions
 * (Conventions in Editing, 1969); both from memory. {@link exergue.legend.LegendParser} turns a text into a
 * {@link exergue.legend.Legend}, a list of {@link exergue.legend.Part}s, or into faults at their very characters;
 * {@link exergue.legend.Letters} gives a legend's forms: as printed, for sorting, and the letters on the coin alone.
 *
 * <table>
 * <caption>Signs</caption>
 * <tr><td>{@code [ΑΒΓ]}</td><td>lost and restored</td></tr>
 * <tr><td>{@code [...]}, {@code [. . .]}</td><td>lost, a dot for each letter</td></tr>
 * <tr><td>{@code [– – –]}, {@code [---]}</td><td>lost, nobody knows how many letters</td></tr>
 * <tr><td>{@code Α(ΒΓ)}</td><td>an abbreviation written out by the editor</td></tr>
 * <tr><td>{@code ⟨ΑΒ⟩}, {@code <ΑΒ>}</td><td>left out by the cutter, added by the editor</td></tr>
 * <tr><td>{@code {ΑΒ}}</td><td>cut by mistake, to be left out</td></tr>
 * <tr><td>{@code ⟦ΑΒΓ⟧}, {@code [[ΑΒΓ]]}</td><td>erased in antiquity</td></tr>
 * <tr><td>letter with a dot below (U+0323)</td><td>damaged, and doubtful without its neighbours</td></tr>
 * <tr><td>letters with a tie between (U+0361)</td><td>in ligature</td></tr>
 * <tr><td>{@code |} or {@code /}</td><td>the line ends</td></tr>
 * <tr><td>{@code ·}</td><td>a pellet or other dividing mark on the coin</td></tr>
 * <tr><td>{@code –}</td><td>the type divides the legend</td></tr>
 * </table>
 *
 * <p>The tie and the two signs for the end of a line are common practice, no source. Letters that run from right to
 * left have no sign: whoever types arrows types them differently. The key {@code retrograde} of a side says it.
 *
 * <p>A full stop outside brackets is a mark on the coin; inside square or double brackets it is a lost letter.
 *
 * <p>Inside {@code [ ]} there can be {@code ( )}, {@code ⟨ ⟩}, {@code ⟦ ⟧}; inside {@code ⟦ ⟧} there can be {@code [ ]},
 * {@code ( )}, {@code ⟨ ⟩}, {@code { }}; inside {@code { }} there can be {@code [ ]}. Inside {@code ( )} and
 * {@code ⟨ ⟩} stand the editor's own letters, of which none can be lost, erased or added once more.
 *
 * <p>Nothing here knows of files, findings or coins.
 */
package exergue.legend;
