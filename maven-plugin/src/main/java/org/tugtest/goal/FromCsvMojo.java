package org.tugtest.goal;

import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/**
 * Makes a sketch harness of a wire list that was kept in a spreadsheet and saved as CSV. Columns
 * are known by their headers, however they are called in the trade; whatever is unclear is listed
 * with its row and column.
 */
@Mojo(name = "from-csv", requiresProject = false, threadSafe = true)
public final class FromCsvMojo extends HarnessGoal {
  /** Skips this goal alone. */
  @Parameter(property = "tugtest.from-csv.skip", defaultValue = "false")
  private boolean skipFromCsv;

  /** The list: a CSV file with a header line and a column for each end of a wire. */
  @Parameter(property = "tugtest.csv")
  private @Nullable String csv;

  /**
   * A JSON file that says which column is what where the headers do not, such as <code>
   * {"from": "Column A", "to": "Column B"}</code>.
   */
  @Parameter(property = "tugtest.csv.columns")
  private @Nullable String csvColumns;

  /**
   * Name of the harness: the file becomes <code>NAME.harness.json</code>. When left out it is that
   * of the list.
   */
  @Parameter(property = "tugtest.csv.name")
  private @Nullable String csvName;

  /** Title of the vehicle. */
  @Parameter(property = "tugtest.csv.title")
  private @Nullable String csvTitle;

  @Override
  boolean skippedAlone() {
    return skipFromCsv;
  }

  @Override
  void run(Surroundings around, Workplace place) throws MojoExecutionException {
    if (csv == null || csv.isBlank()) {
      throw new MojoExecutionException(
          "say which list: " + around.goals() + "from-csv -Dtugtest.csv=wires.csv");
    }
    WireList list = new WireList(around, place, getLog());
    List<String> made = list.make(csv, csvColumns, csvName, csvTitle);
    getLog().info("made " + String.join(", ", made));
    getLog().info("next: " + around.goals() + "check");
  }
}
