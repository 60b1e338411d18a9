package org.leafward.care;

import java.util.List;

/**
 * What came of logging.
 *
 * @param entry what was logged
 * @param remarks what the person should know about it, sentences; often none
 */
public record Logged(LogEntry entry, List<String> remarks) {

	public Logged {
		remarks = List.copyOf(remarks);
	}

}
