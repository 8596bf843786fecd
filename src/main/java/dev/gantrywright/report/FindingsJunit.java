package dev.gantrywright.report;

import dev.gantrywright.machine.Waiver;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import java.io.Writer;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Findings as JUnit XML: a suite for each profile, a case for each rule. An error fails its case, a
 * waived finding skips it, warnings and notes are its output.
 *
 * @param rules the rule book's rules, in its order
 */
public record FindingsJunit(List<Rule> rules) {

  /** Writes the whole document; the writer stays open. */
  public void write(List<ProfileFindings> profiles, Writer out) {
    try {
      XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(out);
      xml.writeStartDocument("UTF-8", "1.0");
      xml.writeCharacters("\n");
      xml.writeStartElement("testsuites");
      xml.writeAttribute("name", "Gantrywright");
      for (ProfileFindings profile : profiles) {
        suite(xml, profile);
      }
      xml.writeCharacters("\n");
      xml.writeEndElement();
      xml.writeCharacters("\n");
      xml.writeEndDocument();
      xml.flush();
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  private void suite(XMLStreamWriter xml, ProfileFindings profile) throws XMLStreamException {
    long failures = rules.stream().filter(rule -> fails(profile, rule)).count();
    long skipped = rules.stream().filter(rule -> skips(profile, rule)).count();
    xml.writeCharacters("\n  ");
    xml.writeStartElement("testsuite");
    xml.writeAttribute("name", plain(profile.file()));
    xml.writeAttribute("tests", String.valueOf(rules.size()));
    xml.writeAttribute("failures", String.valueOf(failures));
    xml.writeAttribute("errors", "0");
    xml.writeAttribute("skipped", String.valueOf(skipped));
    for (Rule rule : rules) {
      testCase(xml, profile, rule);
    }
    xml.writeCharacters("\n  ");
    xml.writeEndElement();
  }

  private static boolean fails(ProfileFindings profile, Rule rule) {
    return profile.open().stream().anyMatch(of(rule).and(f -> f.level() == Level.ERROR));
  }

  private static boolean skips(ProfileFindings profile, Rule rule) {
    return !fails(profile, rule) && profile.sorted().waived().keySet().stream().anyMatch(of(rule));
  }

  private static Predicate<Finding> of(Rule rule) {
    return finding -> finding.id().equals(rule.id());
  }

  private static void testCase(XMLStreamWriter xml, ProfileFindings profile, Rule rule)
      throws XMLStreamException {
    List<Finding> open = profile.open().stream().filter(of(rule)).toList();
    xml.writeCharacters("\n    ");
    xml.writeStartElement("testcase");
    xml.writeAttribute("classname", "gantrywright." + rule.family().word());
    xml.writeAttribute("name", rule.id() + " " + rule.slug());
    if (fails(profile, rule)) {
      text(xml, "failure", rule.summary(), open);
    } else if (skips(profile, rule)) {
      xml.writeEmptyElement("skipped");
      xml.writeAttribute("message", plain(reasons(profile, rule)));
    } else if (!open.isEmpty()) {
      text(xml, "system-out", null, open);
    }
    xml.writeEndElement();
  }

  private static String reasons(ProfileFindings profile, Rule rule) {
    return profile.sorted().waived().entrySet().stream()
        .filter(entry -> entry.getKey().id().equals(rule.id()))
        .map(Map.Entry::getValue)
        .map(Waiver::reason)
        .collect(Collectors.joining("; ", "waived: ", ""));
  }

  private static void text(XMLStreamWriter xml, String name, String message, List<Finding> found)
      throws XMLStreamException {
    xml.writeStartElement(name);
    if (message != null) {
      xml.writeAttribute("message", plain(message));
      xml.writeAttribute("type", "error");
    }
    xml.writeCharacters(
        plain(
            found.stream()
                .map(f -> f.level().word() + " " + f.path() + ": " + f.evidence())
                .collect(Collectors.joining("\n"))));
    xml.writeEndElement();
  }

  /** XML 1.0 has no place for most control characters, not even escaped. */
  private static String plain(String text) {
    return text.replaceAll(
        "[^\\u0009\\u000A\\u000D\\u0020-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]", "\uFFFD");
  }
}
