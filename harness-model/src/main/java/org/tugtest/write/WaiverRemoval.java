package org.tugtest.write;

import java.util.Collection;
import java.util.List;
import org.tugtest.text.SourceText;
import org.tugtest.write.JsonText.Members;

/** Takes waivers out of a file that are no longer wanted. */
public final class WaiverRemoval {
  private WaiverRemoval() {}

  /**
   * The tidy text of a file without these waivers. Ids that the file does not hold are passed over;
   * a section left without waivers goes too.
   *
   * @param path of the file, for problems
   * @param text as decoded
   */
  public static TidyResult remove(String path, String text, Collection<String> ids) {
    SourceText source = SourceText.of(path, TidyWriter.withoutMark(text));
    JsonText.Parsed parsed = JsonText.parse(source);
    JsonText json = parsed.text();
    if (json == null) {
      return new TidyResult.Refused(parsed.problems());
    }
    Members waivers = json.objectAt("waivers");
    JsonEdit edit = new JsonEdit(json);
    if (waivers != null) {
      List<String> gone = ids.stream().filter(waivers.byName()::containsKey).distinct().toList();
      if (!gone.isEmpty() && gone.size() == waivers.byName().size()) {
        edit.remove(List.of("waivers"));
      } else {
        gone.forEach(id -> edit.remove(List.of("waivers", id)));
      }
    }
    TidyResult tidy = TidyWriter.tidy(path, edit.text());
    return tidy instanceof TidyResult.Tidied tidied
        ? new TidyResult.Tidied(tidied.text(), !tidied.text().equals(text))
        : tidy;
  }
}
