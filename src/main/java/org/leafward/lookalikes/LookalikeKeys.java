package org.leafward.lookalikes;

import org.leafward.lookalikes.core.Key;

/** The key in force. */
public interface LookalikeKeys {

	/**
	 * The key that holds now: the one published last, or the one that came with the
	 * server.
	 * @return never null
	 */
	Key current();

}
