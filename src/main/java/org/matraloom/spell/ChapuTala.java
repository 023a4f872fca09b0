package org.matraloom.spell;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.matraloom.score.Anga;
import org.matraloom.score.Tala;

/**
 * The chapu talas, which have groups in place of angas.
 *
 * <p>Sources: lvnaga.wordpress.com, December 2014; ajsriram.blogspot.com, January 2004; tisra chapu
 * from a forum thread on angas for chapu talas. Misra chapu is 3+4 beaten 3+2+2. Clap customs vary
 * by school; a free grouping such as {@code 2+1+2} gives another.
 */
public enum ChapuTala {
  /** Three counts, 1+2. */
  TISRA(1, 2),
  /** Five counts, 2+3. */
  KHANDA(2, 3),
  /** Seven counts, beaten 3+2+2; "chapu" alone means this one. */
  MISRA(3, 2, 2),
  /** Nine counts, 4+5. */
  SANKIRNA(4, 5);

  private final List<Anga> groups;

  ChapuTala(int... groups) {
    List<Anga> angas = new ArrayList<>();
    for (int group : groups) {
      angas.add(new Anga.Group(group));
    }
    this.groups = List.copyOf(angas);
  }

  /**
   * The tala.
   *
   * @return for example "misra chapu" in 3+2+2
   */
  public Tala tala() {
    return new Tala(name().toLowerCase(Locale.ROOT) + " chapu", groups);
  }
}
