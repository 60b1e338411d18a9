/**
 * What every page and every error answer has in common.
 */
@NullMarked
package org.leafward.pages.web;

import org.jspecify.annotations.NullMarked;
