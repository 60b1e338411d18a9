/**
 * The embedded PostgreSQL and clear words when a database can't be used.
 */
@NullMarked
package org.leafward.platform.database;

import org.jspecify.annotations.NullMarked;
