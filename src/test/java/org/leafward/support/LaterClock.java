package org.leafward.support;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import net.bytebuddy.agent.ByteBuddyAgent;
import net.bytebuddy.agent.builder.AgentBuilder;
import net.bytebuddy.asm.Advice;
import net.bytebuddy.matcher.ElementMatchers;
import org.junit.platform.launcher.LauncherSession;
import org.junit.platform.launcher.LauncherSessionListener;

/**
 * Runs tests on another day of the year: {@code mvn test -Dleafward.days-ahead=165}.
 * Gardens have other tasks then, clocks change, and years end; what a test expects must
 * hold all the same. Only {@link Clock} of this JVM is moved: not PostgreSQL, not other
 * processes, and not libraries that ask {@link System#currentTimeMillis()}.
 */
public final class LaterClock implements LauncherSessionListener {

	private static final String SETTING = "leafward.days-ahead";

	@Override
	public void launcherSessionOpened(LauncherSession session) {
		long days = Long.getLong(SETTING, 0);
		if (days == 0) {
			return;
		}
		new AgentBuilder.Default().disableClassFormatChanges()
			.ignore(ElementMatchers.none())
			.with(AgentBuilder.RedefinitionStrategy.RETRANSFORMATION)
			.type(ElementMatchers.named("java.time.Clock"))
			.transform((builder, type, loader, module, domain) -> builder
				.visit(Advice.to(Ahead.class).on(ElementMatchers.named("currentInstant"))))
			.installOn(ByteBuddyAgent.install());
		long moved = Duration.between(Instant.ofEpochMilli(System.currentTimeMillis()), Instant.now()).toDays();
		if (Math.abs(moved - days) > 1) {
			throw new IllegalStateException("this JDK's clock can't be moved: %d days".formatted(moved));
		}
		System.out.println("*** Tests run on " + Instant.now() + " ***");
	}

	/** Its body is copied into the clock, which knows no class of ours. */
	private static final class Ahead {

		private Ahead() {
		}

		@Advice.OnMethodExit
		static void ahead(@Advice.Return(readOnly = false) Instant now) {
			now = Instant.ofEpochSecond(now.getEpochSecond() + Long.getLong("leafward.days-ahead") * 86_400,
					now.getNano());
		}

	}

}
