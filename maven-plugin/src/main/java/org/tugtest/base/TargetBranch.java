package org.tugtest.base;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.git.Environment;

/**
 * The branch that the present one shall be merged into.
 *
 * @param name without the name of a remote
 * @param from who says so, in words
 */
record TargetBranch(String name, String from) {
  private static final String HEADS = "refs/heads/";

  /** Variables in which CI systems tell the target of a merge or pull request. */
  private static final List<String> VARIABLES =
      List.of(
          "CI_MERGE_REQUEST_TARGET_BRANCH_NAME",
          "GITHUB_BASE_REF",
          "CHANGE_TARGET",
          "BITBUCKET_PR_DESTINATION_BRANCH",
          "SYSTEM_PULLREQUEST_TARGETBRANCH");

  /** That of a variable of the CI system, else {@code named}. */
  static Optional<TargetBranch> of(Environment environment, @Nullable String named) {
    for (String variable : VARIABLES) {
      Optional<String> told = environment.get(variable).map(TargetBranch::plain);
      if (told.isPresent()) {
        return told.map(branch -> new TargetBranch(branch, "told by " + variable));
      }
    }
    return Optional.ofNullable(named)
        .map(branch -> new TargetBranch(plain(branch), "told by tugtest.base"));
  }

  private static String plain(String branch) {
    return branch.startsWith(HEADS) ? branch.substring(HEADS.length()) : branch;
  }
}
