/** What is checked, and what it is held against, in the words of git. */
@NullMarked
package org.tugtest.base;

import org.jspecify.annotations.NullMarked;
