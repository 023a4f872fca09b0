package org.matraloom.app.prove;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.matraloom.app.cli.Paragraph;
import org.matraloom.form.Joint;
import org.matraloom.form.Joints;
import org.matraloom.form.Mora;
import org.matraloom.time.Ratio;

/** The moras and the joints of a phrase, by the matras that come before them. */
final class JointsText {

  private JointsText() {}

  static void print(Joints joints, PrintWriter out) {
    for (Mora mora : joints.moras()) {
      out.println(Paragraph.folded("  mora after " + place(joints, mora) + ": " + words(mora)));
    }
    List<String> places = new ArrayList<>();
    for (int sollu = 0; sollu + 1 < joints.sollus(); sollu++) {
      Joint joint = joints.after(sollu);
      if (joint != Joint.INSIDE) {
        places.add(joints.matrasAfter(sollu).toMixed() + " " + joint.word());
      }
    }
    if (!places.isEmpty()) {
      out.println(Paragraph.folded("  joints after " + String.join(", ", places)));
    }
  }

  private static String place(Joints joints, Mora mora) {
    return joints.matrasBefore(mora.start()).toMixed();
  }

  private static String words(Mora mora) {
    String gap = mora.gap().signum() == 0 ? " " : "(" + mora.gap().toMixed() + ")";
    return mora.statements().stream().map(Ratio::toMixed).collect(Collectors.joining(gap));
  }
}
