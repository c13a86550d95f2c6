package org.tugtest.goal;

import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;
import org.tugtest.write.SheetKind;

/**
 * Writes wires, connectors and devices as CSV files for a spreadsheet, or merges an edited one
 * back: by id, and only the fields whose cells changed.
 */
@Mojo(name = "sheet", requiresProject = false, threadSafe = true)
public final class SheetMojo extends HarnessGoal {
  /** Skips this goal alone. */
  @Parameter(property = "tugtest.sheet.skip", defaultValue = "false")
  private boolean skipSheet;

  /** The root, relative to the harness folder; needed where there are several. */
  @Parameter(property = "tugtest.sheet.root")
  private @Nullable String sheetRoot;

  /**
   * An edited table to merge back; its name says which it is: <code>wires.csv</code>, <code>
   * connectors.csv</code> or <code>devices.csv</code>. When left out the tables are written.
   */
  @Parameter(property = "tugtest.sheet.from")
  private @Nullable String sheetFrom;

  /** File of the harness folder for new rows that name no file. */
  @Parameter(property = "tugtest.sheet.newRows")
  private @Nullable String sheetNewRows;

  /** Takes things out of the files that are no longer in the table. */
  @Parameter(property = "tugtest.sheet.remove", defaultValue = "false")
  private boolean sheetRemove;

  @Override
  boolean skippedAlone() {
    return skipSheet;
  }

  @Override
  void run(Surroundings around, Workplace place)
      throws MojoExecutionException, MojoFailureException {
    Sheets sheets = Sheets.of(around, place, sheetRoot, getLog());
    if (sheetFrom == null || sheetFrom.isBlank()) {
      List<String> written = sheets.write();
      getLog().info("wrote " + String.join(", ", written));
      getLog()
          .info(
              "next: edit one, then "
                  + around.goals()
                  + "sheet -Dtugtest.sheet.from="
                  + written.get(0));
      return;
    }
    SheetKind kind = Sheets.kindOf(sheetFrom);
    sheets.merge(kind, sheetFrom, sheetNewRows, sheetRemove);
  }
}
