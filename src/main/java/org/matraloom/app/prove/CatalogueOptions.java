package org.matraloom.app.prove;

import java.util.Optional;
import org.matraloom.app.cli.NadaiNumber;
import org.matraloom.app.cli.UserError;
import org.matraloom.fit.WholeRange;
import org.matraloom.form.Yati;
import org.matraloom.score.Tala;
import org.matraloom.spell.TalaReader;
import picocli.CommandLine.Option;

/** Which scores of a folder are listed. */
final class CatalogueOptions {

  @Option(
      names = "--nadai",
      paramLabel = "N",
      description = "In this nadai: of a folder, only scores with such a round.")
  private NadaiNumber nadai;

  /** The names of shapes, as they are typed. */
  static final String SHAPES = "One of sama, gopuccha, srotovaha, mridanga, damaru, vishama, none.";

  @Option(
      names = "--yati",
      paramLabel = "SHAPE",
      description = "Of this shape: of a folder, only scores with such a purvanga. " + SHAPES)
  private Yati yati;

  /** A filter with the tala, if one is named, and the length, if one is given. */
  CatalogueFilter filter(Optional<String> talaName, WholeRange matras) {
    return new CatalogueFilter(
        talaName.map(CatalogueOptions::tala),
        Optional.ofNullable(nadai).map(NadaiNumber::matrasPerBeat),
        Optional.ofNullable(matras),
        Optional.ofNullable(yati));
  }

  private static Tala tala(String name) {
    return TalaReader.read(name)
        .tala()
        .orElseThrow(() -> new UserError("--tala " + name + ": there is no such tala"));
  }
}
