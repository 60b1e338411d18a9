package org.leafward.pages.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.webmvc.autoconfigure.WebMvcRegistrations;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.server.PathContainer;
import org.springframework.http.server.PathContainer.PathSegment;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.ServletRequestPathUtils;

/**
 * Looks at the first segment of an address before anything else. The framework tries the
 * methods and patterns of all our addresses, several hundred, for each request whose
 * address has a variable, which took more than a quarter of the time of a poll.
 */
@Configuration(proxyBeanMethods = false)
class FirstSegments implements WebMvcRegistrations {

	@Override
	public RequestMappingHandlerMapping getRequestMappingHandlerMapping() {
		return new Mapping();
	}

	/** Rules out what begins otherwise; all that is left is up to the framework. */
	static final class Mapping extends RequestMappingHandlerMapping {

		/** First segments that are written out; those without one may begin anyhow. */
		private volatile Map<RequestMappingInfo, String> first = Map.of();

		@Override
		public void afterPropertiesSet() {
			super.afterPropertiesSet();
			Map<RequestMappingInfo, String> found = new IdentityHashMap<>();
			getHandlerMethods().keySet().forEach((info) -> {
				String segment = firstOf(info.getPatternValues());
				if (segment != null) {
					found.put(info, segment);
				}
			});
			this.first = found;
		}

		/** Null where patterns differ or begin with a variable or a sign. */
		static @Nullable String firstOf(Set<String> patterns) {
			String first = null;
			for (String pattern : patterns) {
				String[] segments = pattern.split("/", 3);
				if (segments.length < 2 || !segments[1].matches("[a-z0-9-]+")
						|| first != null && !first.equals(segments[1])) {
					return null;
				}
				first = segments[1];
			}
			return first;
		}

		@Override
		protected @Nullable RequestMappingInfo getMatchingMapping(RequestMappingInfo info, HttpServletRequest request) {
			String wanted = this.first.get(info);
			return (wanted == null || wanted.equals(firstOf(request))) ? super.getMatchingMapping(info, request) : null;
		}

		private static @Nullable String firstOf(HttpServletRequest request) {
			PathContainer path = ServletRequestPathUtils.getParsedRequestPath(request).pathWithinApplication();
			return (path.elements().size() > 1 && path.elements().get(1) instanceof PathSegment segment)
					? segment.valueToMatch() : null;
		}

	}

}
