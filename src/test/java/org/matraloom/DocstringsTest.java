package org.matraloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Everything public is explained where it stands, and no class grows too long to read. */
class DocstringsTest {

  private static final Path SOURCES = Path.of("src", "main", "java");
  private static final int FEWEST_FILES = 100;
  private static final int FEWEST_MEMBERS = 600;
  private static final int LONGEST_CLASS = 250;

  private final List<String> faults = new ArrayList<>();
  private int members;

  @Test
  void everythingPublicIsExplained() throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    int files = 0;
    try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(sources()));
      DocTrees docs = DocTrees.instance(task);
      for (CompilationUnitTree unit : task.parse()) {
        files++;
        TreePath file = new TreePath(unit);
        for (Tree type : unit.getTypeDecls()) {
          if (type instanceof ClassTree tree && isPublic(tree.getModifiers())) {
            checkType(docs, new TreePath(file, tree), tree, "");
          }
        }
      }
    }
    assertTrue(files >= FEWEST_FILES, "files were read: " + files);
    assertTrue(members >= FEWEST_MEMBERS, "public types and members were read: " + members);
    assertEquals("", String.join("\n", faults));
  }

  private void checkType(DocTrees docs, TreePath path, ClassTree type, String outer) {
    String name = outer + type.getSimpleName();
    DocCommentTree doc = requireDoc(docs, path, name);
    boolean inInterface = type.getKind() == Tree.Kind.INTERFACE;
    for (Tree member : type.getMembers()) {
      TreePath memberPath = new TreePath(path, member);
      if (member instanceof ClassTree nested && (inInterface || isPublic(nested.getModifiers()))) {
        checkType(docs, memberPath, nested, name + ".");
      } else if (member instanceof MethodTree method
          && (inInterface || isPublic(method.getModifiers()))
          && !isPrivate(method.getModifiers())) {
        checkMethod(docs, memberPath, method, name);
      } else if (member instanceof VariableTree field) {
        if (isComponent(type, field)) {
          requireParam(doc, field.getName().toString(), name);
        } else if (inInterface || isPublic(field.getModifiers())) {
          requireDoc(docs, memberPath, name + "." + field.getName());
        }
      }
    }
  }

  private void checkMethod(DocTrees docs, TreePath path, MethodTree method, String type) {
    String name = type + "." + method.getName();
    boolean overrides =
        method.getModifiers().getAnnotations().stream()
            .anyMatch(annotation -> annotation.getAnnotationType().toString().equals("Override"));
    if (overrides || isCompact(docs, path, method)) {
      return;
    }
    DocCommentTree doc = requireDoc(docs, path, name);
    for (VariableTree parameter : method.getParameters()) {
      requireParam(doc, parameter.getName().toString(), name);
    }
    boolean gives =
        method.getReturnType() != null && !method.getReturnType().toString().equals("void");
    if (gives && doc != null && !hasTag(doc, DocTree.Kind.RETURN)) {
      faults.add(name + " does not say what it returns");
    }
  }

  private DocCommentTree requireDoc(DocTrees docs, TreePath path, String name) {
    members++;
    DocCommentTree doc = docs.getDocCommentTree(path);
    if (doc == null) {
      faults.add(name + " has no doc comment");
    } else if (!text(doc.getFirstSentence()).strip().endsWith(".")) {
      faults.add(name + " does not begin with a sentence: " + text(doc.getFirstSentence()));
    }
    return doc;
  }

  private void requireParam(DocCommentTree doc, String parameter, String owner) {
    members++;
    boolean found =
        doc != null
            && doc.getBlockTags().stream()
                .filter(ParamTree.class::isInstance)
                .map(ParamTree.class::cast)
                .anyMatch(
                    tag ->
                        tag.getName().toString().equals(parameter)
                            && !tag.getDescription().isEmpty());
    if (!found) {
      faults.add(owner + " does not explain " + parameter);
    }
  }

  private static boolean hasTag(DocCommentTree doc, DocTree.Kind kind) {
    return doc.getBlockTags().stream().anyMatch(tag -> tag.getKind() == kind)
        || doc.getFirstSentence().stream().anyMatch(part -> part.getKind() == kind);
  }

  private static String text(List<? extends DocTree> parts) {
    StringBuilder text = new StringBuilder();
    parts.forEach(text::append);
    return text.toString();
  }

  private static boolean isPublic(ModifiersTree modifiers) {
    return modifiers.getFlags().contains(Modifier.PUBLIC)
        || modifiers.getFlags().contains(Modifier.PROTECTED);
  }

  private static boolean isPrivate(ModifiersTree modifiers) {
    return modifiers.getFlags().contains(Modifier.PRIVATE);
  }

  /** The parser gives a record's components as private fields that are not static. */
  private static boolean isComponent(ClassTree type, VariableTree field) {
    return type.getKind() == Tree.Kind.RECORD
        && !field.getModifiers().getFlags().contains(Modifier.STATIC);
  }

  /** A compact constructor is written without parameters; its record explains the components. */
  private static boolean isCompact(DocTrees docs, TreePath path, MethodTree method) {
    ClassTree owner = (ClassTree) path.getParentPath().getLeaf();
    if (owner.getKind() != Tree.Kind.RECORD || method.getReturnType() != null) {
      return false;
    }
    CompilationUnitTree unit = path.getCompilationUnit();
    int start = (int) docs.getSourcePositions().getStartPosition(unit, method);
    int body = (int) docs.getSourcePositions().getStartPosition(unit, method.getBody());
    try {
      return !unit.getSourceFile()
          .getCharContent(true)
          .toString()
          .substring(start, body)
          .contains("(");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void noClassIsTooLongToRead() throws IOException {
    Map<String, Integer> tooLong = new TreeMap<>();
    List<Path> sources = sources();
    for (Path source : sources) {
      int lines = Files.readAllLines(source).size();
      String name = source.getFileName().toString();
      if (lines > LONGEST_CLASS) {
        tooLong.put(name, lines);
      }
    }
    assertTrue(sources.size() >= FEWEST_FILES, "files were read: " + sources.size());
    assertEquals(Map.of(), tooLong, "split these");
  }

  private static List<Path> sources() throws IOException {
    try (Stream<Path> tree = Files.walk(SOURCES)) {
      return tree.filter(path -> path.toString().endsWith(".java")).sorted().toList();
    }
  }
}
