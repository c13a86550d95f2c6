/** The catalogue of rules, and how they are run: stages, coverage, waivers, crashes. */
@NullMarked
package org.tugtest.check;

import org.jspecify.annotations.NullMarked;
