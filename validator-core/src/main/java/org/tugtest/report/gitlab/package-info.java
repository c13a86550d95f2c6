/** A report as a GitLab code quality file, which merge requests show beside the changed lines. */
@NullMarked
package org.tugtest.report.gitlab;

import org.jspecify.annotations.NullMarked;
