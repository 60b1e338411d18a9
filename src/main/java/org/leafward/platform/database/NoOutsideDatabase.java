package org.leafward.platform.database;

import org.springframework.context.annotation.Condition;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.core.type.AnnotatedTypeMetadata;
import org.springframework.util.StringUtils;

/**
 * True when no PostgreSQL is named by {@code spring.datasource.url}; an empty value
 * counts as none.
 */
class NoOutsideDatabase implements Condition {

	@Override
	public boolean matches(ConditionContext context, AnnotatedTypeMetadata metadata) {
		return !StringUtils.hasText(context.getEnvironment().getProperty("spring.datasource.url"));
	}

}
