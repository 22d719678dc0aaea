package boughwright.rulebook;

import java.util.function.Supplier;

/**
 * The class loader through which the engine must find its own services.
 *
 * <p>The engine asks the current thread for it, once for the whole life of the process. Inside an executable jar a thread of the common
 * pool has a loader that sees no library at all; were such a thread the first to touch the engine, it would stay broken for good.
 */
final class EngineLoader {

    static final ClassLoader CLASSES = EngineLoader.class.getClassLoader();

    private EngineLoader() {
    }

    /** Does {@code work} with the engine's loader as the thread's own, then gives the thread its former one back. */
    static <T> T during(Supplier<T> work) {
        var thread = Thread.currentThread();
        var former = thread.getContextClassLoader();
        thread.setContextClassLoader(CLASSES);
        try {
            return work.get();
        } finally {
            thread.setContextClassLoader(former);
        }
    }
}
