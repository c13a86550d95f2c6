package org.tugtest.rule.written;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Ledger;
import org.tugtest.text.JsonPointer;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Problem;

/** Makes findings of what reading the files met. The files are what is judged. */
final class FileProblems {
  /** Why the content of a file is not judged. */
  static final String UNREAD = "the file could not be read";

  private static final String FILES = "files/";

  private FileProblems() {}

  /** One finding for each problem of a kind; the files without one are fine. */
  static void judge(Facts facts, Problem.Kind kind, Ledger ledger) {
    judge(facts, kind, ledger, Set.of());
  }

  /** The same; {@code others} have findings already. */
  static void judge(Facts facts, Problem.Kind kind, Ledger ledger, Set<String> others) {
    Set<String> fine = new TreeSet<>(NaturalOrder.NATURAL);
    fine.addAll(facts.harness().files());
    fine.addAll(facts.unread());
    fine.removeAll(others);
    for (Problem problem : facts.problems()) {
      if (problem.kind() == kind) {
        String file = fileOf(problem);
        fine.remove(file);
        ledger.finding(finding(problem), List.of(Subject.file(file)));
      }
    }
    for (String file : fine) {
      if (kind != Problem.Kind.FILE_UNUSED && facts.unread().contains(file)) {
        ledger.notJudged(Subject.file(file), UNREAD);
      } else {
        ledger.fine();
      }
    }
  }

  private static String fileOf(Problem problem) {
    return problem.subject().startsWith(FILES)
        ? problem.subject().substring(FILES.length())
        : problem.at().get(0).file();
  }

  private static Finding.Draft finding(Problem problem) {
    Finding.Draft draft =
        Finding.on(new Subject(problem.subject()))
            .kind(inside(problem.at().get(0).pointer()))
            .message(phrase(problem.message()))
            .remedy(unstopped(problem.remedy()));
    problem.at().forEach(draft::at);
    return draft;
  }

  /** The names that lead from a thing to the value, so that two problems of one thing differ. */
  private static String inside(String pointer) {
    List<String> names = JsonPointer.names(pointer);
    boolean nested =
        !names.isEmpty() && (names.get(0).equals("parts") || names.get(0).equals("layout"));
    int thing = nested ? 3 : 2;
    return names.size() <= thing ? "" : String.join(".", names.subList(thing, names.size()));
  }

  private static String phrase(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }

  /** The sentence as the rules write a remedy: without a capital and a full stop. */
  private static String unstopped(String sentence) {
    String phrase = phrase(sentence);
    boolean word =
        phrase.length() > 1
            && Character.isUpperCase(phrase.charAt(0))
            && Character.isLowerCase(phrase.charAt(1));
    return word ? Character.toLowerCase(phrase.charAt(0)) + phrase.substring(1) : phrase;
  }
}
