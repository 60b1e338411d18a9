/** What mails and pages say: pure. */
@NullMarked
package org.leafward.workdays.core.words;

import org.jspecify.annotations.NullMarked;
