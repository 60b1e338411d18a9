package org.leafward.climate;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Values that were worked out lately, up to a number; those not used for longest go
 * first. A key holds the versions of all that its value is made from, so a value is never
 * stale. Safe for use by threads: two that miss the same value both work it out.
 *
 * @param <K> what a value is made from
 * @param <V> the values
 */
final class BoundedCache<K, V> {

	private final Map<K, V> kept;

	/**
	 * Makes an empty cache.
	 * @param most most values that are kept
	 */
	BoundedCache(int most) {
		this.kept = new LinkedHashMap<>(16, 0.75f, true) {

			@Override
			protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
				return size() > most;
			}

		};
	}

	/**
	 * A value.
	 * @param key what it is made from
	 * @param make works it out when it isn't there; what it throws is thrown on
	 * @return the value
	 */
	V get(K key, Supplier<V> make) {
		synchronized (this.kept) {
			V known = this.kept.get(key);
			if (known != null) {
				return known;
			}
		}
		V made = make.get();
		synchronized (this.kept) {
			this.kept.put(key, made);
		}
		return made;
	}

}
