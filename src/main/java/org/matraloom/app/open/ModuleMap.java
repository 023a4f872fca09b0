package org.matraloom.app.open;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.matraloom.door.DoorFault;
import org.matraloom.door.DoorReply;
import org.matraloom.door.PageParts;

/**
 * The modules of others that the page imports, each served under a short name of its own.
 *
 * <p>Source of the map: WHATWG HTML, import maps. Where a module lies in its WebJar depends on its
 * version, which its own description tells.
 */
final class ModuleMap {

  /**
   * A module.
   *
   * @param imported the name that modules import it by
   * @param jar the name of its WebJar
   * @param file where it lies in there
   */
  private record Module(String imported, String jar, String file) {
    String served() {
      return jar + ".js";
    }
  }

  private static final List<Module> MODULES =
      List.of(
          new Module("@codemirror/state", "codemirror__state", "dist/index.js"),
          new Module("@codemirror/view", "codemirror__view", "dist/index.js"),
          new Module("@codemirror/language", "codemirror__language", "dist/index.js"),
          new Module("@codemirror/commands", "codemirror__commands", "dist/index.js"),
          new Module("@codemirror/autocomplete", "codemirror__autocomplete", "dist/index.js"),
          new Module("@codemirror/lint", "codemirror__lint", "dist/index.js"),
          new Module("@lezer/common", "lezer__common", "dist/index.js"),
          new Module("@lezer/highlight", "lezer__highlight", "dist/index.js"),
          new Module("style-mod", "style-mod", "src/style-mod.js"),
          new Module("w3c-keyname", "w3c-keyname", "index.js"),
          new Module("crelt", "crelt", "index.js"),
          new Module("@marijn/find-cluster-break", "marijn__find-cluster-break", "src/index.js"));

  private final Map<String, byte[]> packed = new ConcurrentHashMap<>();

  String importMap() {
    return MODULES.stream()
        .map(module -> "\"" + module.imported() + "\":\"/lib/" + module.served() + "\"")
        .collect(Collectors.joining(",", "{\"imports\":{", "}}"));
  }

  DoorReply reply(String served) throws DoorFault, IOException {
    Module module =
        MODULES.stream()
            .filter(one -> one.served().equals(served))
            .findFirst()
            .orElseThrow(() -> new DoorFault(DoorReply.MISSING, "there is no such module"));
    byte[] body = packed.get(served);
    if (body == null) {
      body = PageParts.packed(PageParts.read(path(module)));
      packed.put(served, body);
    }
    Map<String, String> head = Map.of("Content-Encoding", "gzip");
    return new DoorReply(DoorReply.OK, "text/javascript; charset=utf-8", head, body);
  }

  private static String path(Module module) throws DoorFault, IOException {
    Properties about = new Properties();
    String description =
        new String(
            PageParts.read("/META-INF/maven/org.webjars.npm/" + module.jar() + "/pom.properties"),
            StandardCharsets.UTF_8);
    about.load(new StringReader(description));
    return "/META-INF/resources/webjars/"
        + module.jar()
        + "/"
        + about.getProperty("version")
        + "/"
        + module.file();
  }
}
