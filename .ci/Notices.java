import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Writes whose work is in the program and on what terms: {@code java .ci/Notices.java BOM LIBRARIES NOTICES}.
 *
 * <p>Reads the bill of materials (CycloneDX, XML). Fails, naming the library, when none of its licences is one that we take,
 * when it tells none, and when a jar of the libraries is not on the bill.
 */
final class Notices {
    /** Free to use in a program under the Apache licence: permissive ones, and those that ask for changes of the library itself only. */
    private static final Set<String> ALLOWED = Set.of(
            "Apache-2.0", "MIT", "MIT-0", "ISC", "0BSD", "BSD-2-Clause", "BSD-3-Clause", "CC0-1.0", "Unlicense", "W3C",
            "EPL-1.0", "EPL-2.0", "CDDL-1.0", "CDDL-1.1", "LGPL-2.1-only", "LGPL-2.1-or-later", "LGPL-3.0-only",
            "LGPL-3.0-or-later", "GPL-2.0-with-classpath-exception");

    /**
     * Where the bill reads the words alone. JLine's POM says "The BSD License" and points to the text of three clauses; that of Marine API says
     * "LGPL 3.0 license", and its head "version 3 of the License, or (at your option) any later version".
     */
    private static final Map<String, List<String>> READ_BY_HAND = Map.of(
            "org.jline", List.of("BSD-3-Clause"), "net.sf.marineapi", List.of("LGPL-3.0-or-later"));

    /** Parts of the page that lie unpacked in our own jar. */
    private static final String OF_THE_PAGE = "org.webjars.npm";

    private static final String OURS = "setwright";

    private record Library(String group, String name, String version, List<String> licences, String address) {
        String jar() {
            return name + "-" + version + ".jar";
        }
    }

    public static void main(String[] arguments) throws Exception {
        List<Library> named = libraries(Path.of(arguments[0]));
        Set<String> jars = new TreeSet<>();
        try (Stream<Path> entries = Files.list(Path.of(arguments[1]))) {
            entries.map(jar -> jar.getFileName().toString())
                    .filter(jar -> !jar.startsWith(OURS + "-"))
                    .forEach(jars::add);
        }
        List<Library> shipped = named.stream()
                .filter(library -> jars.contains(library.jar()) || library.group().equals(OF_THE_PAGE))
                .toList();
        List<String> troubles = new ArrayList<>();
        shipped.stream()
                .filter(library -> library.licences().stream().noneMatch(ALLOWED::contains))
                .map(library -> library.group() + ":" + library.name() + " " + library.version() + ": "
                        + (library.licences().isEmpty() ? "tells no licence" : String.join(" or ", library.licences())
                                + " is not among the licences that we take"))
                .forEach(troubles::add);
        shipped.forEach(library -> jars.remove(library.jar()));
        jars.forEach(jar -> troubles.add(jar + ": is not on the bill of materials"));
        if (!troubles.isEmpty()) {
            troubles.forEach(System.err::println);
            System.err.println("The licences that we take stand in .ci/Notices.java; another one is a decision.");
            System.exit(1);
        }
        Files.writeString(Path.of(arguments[2]), page(shipped));
    }

    private static String page(List<Library> shipped) {
        StringBuilder page = new StringBuilder("""
                # Work of others in this program

                Setwright itself is under the Apache License 2.0 (LICENSE). Its libraries come as they were published; where a
                library names several licences, any one of them may be chosen. Their own words (LICENSE, NOTICE) lie in their
                jars, and for uPlot and lit-html in setwright.jar. share/bom.json and share/bom.xml say the same for programs (CycloneDX).

                An image with its own Java holds parts of OpenJDK, under the GNU General Public License 2 with the Classpath
                Exception; its words and those of what it contains lie in the runtime's folder legal.

                | library | version | licence | where |
                |---|---|---|---|
                """);
        for (Library library : shipped) {
            page.append("| ").append(library.group()).append(':').append(library.name())
                    .append(" | ").append(library.version())
                    .append(" | ").append(String.join(" or ", library.licences()))
                    .append(" | ").append(library.address()).append(" |\n");
        }
        return page.toString();
    }

    private static List<Library> libraries(Path bill) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        Element bom = factory.newDocumentBuilder().parse(bill.toFile()).getDocumentElement();
        return child(bom, "components").stream()
                .flatMap(components -> child(components, "component").stream())
                .filter(component -> !text(component, "group").equals(OURS))
                .map(Notices::library)
                .sorted((a, b) -> (a.group() + ":" + a.name()).compareTo(b.group() + ":" + b.name()))
                .toList();
    }

    private static Library library(Element component) {
        List<String> licences = child(component, "licenses").stream()
                .flatMap(licenses -> Stream.concat(
                        child(licenses, "license").stream()
                                .map(licence -> text(licence, "id") + text(licence, "name")),
                        child(licenses, "expression").stream()
                                .flatMap(expression -> Arrays.stream(expression.getTextContent().split(" OR ")))
                                .map(words -> words.replaceAll("[()]", "").strip())))
                .distinct()
                .toList();
        String address = child(component, "externalReferences").stream()
                .flatMap(references -> child(references, "reference").stream())
                .filter(reference -> reference.getAttribute("type").equals("website"))
                .map(reference -> text(reference, "url"))
                .findFirst()
                .orElse("");
        String group = text(component, "group");
        return new Library(
                group, text(component, "name"), text(component, "version"),
                READ_BY_HAND.getOrDefault(group, licences), address);
    }

    private static String text(Element element, String name) {
        return child(element, name).stream().map(Node::getTextContent).findFirst().orElse("").strip();
    }

    private static List<Element> child(Element element, String name) {
        List<Element> found = new ArrayList<>();
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element one && name.equals(one.getLocalName())) {
                found.add(one);
            }
        }
        return found;
    }
}
