/** Which language and units a request wants, and how a page gets them. */
@NullMarked
package org.leafward.spoken.web;

import org.jspecify.annotations.NullMarked;
