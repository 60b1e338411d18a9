package org.leafward.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Reads several things that somebody gave and keeps every refusal, so that all of them
 * can be told at once.
 */
public final class Findings {

	private final List<BadInput> refused = new ArrayList<>();

	/**
	 * Reads one thing now.
	 * @param <T> what it is
	 * @param reading may refuse
	 * @return gives what was read, not before {@link #give}
	 */
	public <T> Supplier<T> read(Supplier<T> reading) {
		@Nullable T value = null;
		try {
			value = reading.get();
		}
		catch (BadInput ex) {
			this.refused.addAll(ex.all());
		}
		T read = value;
		return () -> Objects.requireNonNull(read, "refused");
	}

	/**
	 * Checks something that gives nothing.
	 * @param check may refuse
	 */
	public void check(Runnable check) {
		read(() -> {
			check.run();
			return true;
		});
	}

	/**
	 * Makes the whole of what was read.
	 * @param <T> what it is
	 * @param whole may refuse too
	 * @return the whole
	 * @throws BadInput with everything that was refused
	 */
	public <T> T give(Supplier<T> whole) {
		end();
		return whole.get();
	}

	/**
	 * Ends the reading.
	 * @throws BadInput with everything that was refused
	 */
	public void end() {
		if (!this.refused.isEmpty()) {
			throw BadInput.of(this.refused);
		}
	}

}
