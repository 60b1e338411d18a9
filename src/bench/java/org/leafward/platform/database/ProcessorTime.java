package org.leafward.platform.database;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.stream.Stream;

/**
 * Processor time that processes took so far, from Linux's {@code /proc}. It hardly
 * depends on who else uses the machine, which the time on the clock does.
 */
public final class ProcessorTime {

	/** Unit of {@code /proc/PID/stat}; 100 on every common Linux. */
	private static final double TICKS_PER_SECOND = 100;

	/** Fields of {@code /proc/PID/stat} behind the name, counted from 0; see proc(5). */
	private static final int USER = 11;

	private static final int CHILDREN_SYSTEM = 14;

	private ProcessorTime() {
	}

	/**
	 * User and system time of a process and all its descendants, ended ones included.
	 * @param root the process
	 * @return seconds; not a number where there is no {@code /proc}
	 */
	public static double ofTree(ProcessHandle root) {
		return Files.exists(Path.of("/proc/self/stat"))
				? Stream.concat(Stream.of(root), root.descendants()).mapToDouble(ProcessorTime::of).sum() : Double.NaN;
	}

	private static double of(ProcessHandle process) {
		try {
			String line = Files.readString(Path.of("/proc", String.valueOf(process.pid()), "stat"));
			String[] fields = line.substring(line.lastIndexOf(')') + 2).split(" ");
			double ticks = 0;
			for (int field = USER; field <= CHILDREN_SYSTEM; field++) {
				ticks += Double.parseDouble(fields[field]);
			}
			return ticks / TICKS_PER_SECOND;
		}
		catch (NoSuchFileException ex) {
			return 0;
		}
		catch (IOException ex) {
			throw new IllegalStateException(ex);
		}
	}

}
