/**
 * The catalogue of rules, and how they are run: coverage, waivers, crashes, causes, offers tried.
 */
@NullMarked
package org.tugtest.check;

import org.jspecify.annotations.NullMarked;
