package org.leafward.care.core.plan;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A value that is made when it is first asked for and then kept.
 *
 * @param <T> what is made; always the same by the same maker
 */
final class Lazy<T> {

	private final Supplier<T> maker;

	private volatile @Nullable T value;

	Lazy(Supplier<T> maker) {
		this.maker = maker;
	}

	T get() {
		T known = this.value;
		if (known == null) {
			known = this.maker.get();
			this.value = known;
		}
		return known;
	}

}
