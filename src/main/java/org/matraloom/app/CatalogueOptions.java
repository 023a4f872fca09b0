package org.matraloom.app;

import java.util.Optional;
import org.matraloom.kanakku.WholeRange;
import org.matraloom.kanakku.Yati;
import org.matraloom.notation.TalaReader;
import org.matraloom.score.Tala;
import picocli.CommandLine.Option;

/** Which scores of a folder are listed. */
final class CatalogueOptions {

  @Option(
      names = "--nadai",
      paramLabel = "N",
      description = "Of a folder: only scores with a round in this nadai.")
  private Integer nadai;

  @Option(
      names = "--yati",
      paramLabel = "SHAPE",
      description =
          "Of a folder: only scores whose purvanga has this shape: ${COMPLETION-CANDIDATES}.")
  private Yati yati;

  /** A filter with the tala and the length that other options give. */
  CatalogueFilter filter(SettingOptions setting, WholeRange matras) {
    Optional<Tala> tala = Optional.empty();
    if (setting.namesTala()) {
      tala = TalaReader.read(setting.tala()).tala();
      if (tala.isEmpty()) {
        throw new UserError("--tala " + setting.tala() + ": there is no such tala");
      }
    }
    return new CatalogueFilter(
        tala, Optional.ofNullable(nadai), Optional.ofNullable(matras), Optional.ofNullable(yati));
  }
}
