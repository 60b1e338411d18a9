package org.leafward.platform.database;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.boot.diagnostics.FailureAnalyzer;

/**
 * Turns trouble with the database at start into one line of what and one of what to do.
 */
class DatabaseTroubleAnalyzer implements FailureAnalyzer {

	@Override
	public @Nullable FailureAnalysis analyze(Throwable failure) {
		for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
			if (cause instanceof DatabaseTrouble trouble) {
				return new FailureAnalysis(trouble.getMessage(), trouble.action(), failure);
			}
			if (cause instanceof SQLException sql) {
				FailureAnalysis analysis = analyze(sql, failure);
				if (analysis != null) {
					return analysis;
				}
			}
		}
		return null;
	}

	/** SQLSTATE classes are PostgreSQL's, appendix A of its manual. */
	private static @Nullable FailureAnalysis analyze(SQLException sql, Throwable failure) {
		String state = (sql.getSQLState() != null) ? sql.getSQLState() : "";
		if (state.startsWith("08")) {
			return new FailureAnalysis("The database does not answer: " + sql.getMessage(),
					"Check spring.datasource.url and that PostgreSQL is running there, or remove the setting to use the embedded one.",
					failure);
		}
		if (state.startsWith("28")) {
			return new FailureAnalysis("The database refuses the sign-in: " + sql.getMessage(),
					"Check spring.datasource.username and spring.datasource.password.", failure);
		}
		if (state.equals("3D000")) {
			return new FailureAnalysis("The database does not exist: " + sql.getMessage(),
					"Create it, or correct the name at the end of spring.datasource.url.", failure);
		}
		if (state.equals("42501")) {
			return new FailureAnalysis("The database user lacks a right: " + sql.getMessage(),
					"Let the user create schemas in this database (grant create on database).", failure);
		}
		if (state.startsWith("53")) {
			return new FailureAnalysis("The database is out of room: " + sql.getMessage(),
					state.equals("53100") ? "Free disk space where PostgreSQL keeps its data, then start again."
							: "Give PostgreSQL more memory or connections, then start again.",
					failure);
		}
		return null;
	}

}
