package org.lapwright.app.usecase.advice;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Searches for best set-ups that go on while somebody looks on, and can be ended. One goes on at a time, the rest wait. */
public final class BestSetUpSearches {
    /** Older ones are forgotten. */
    private static final int REMEMBERED = 8;

    private final FindBestSetUp findBestSetUp;
    private final Map<Long, Search> searches = new LinkedHashMap<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "best-set-up");
        thread.setDaemon(true);
        return thread;
    });
    private long last;

    /** Searches by {@code findBestSetUp}. */
    public BestSetUpSearches(FindBestSetUp findBestSetUp) {
        this.findBestSetUp = findBestSetUp;
    }

    /**
     * How a search stands.
     *
     * @param share of it that is over, 0 to 1
     * @param ended whether somebody ended it before it was over
     * @param answer once it is over
     * @param problem why there is no answer; empty while it goes on and when there is one
     */
    public record State(double share, boolean ended, Optional<FindBestSetUp.Answer> answer, String problem) {
        /** Whether nothing more will come. */
        public boolean isOver() {
            return answer.isPresent() || !problem.isEmpty();
        }
    }

    private static final class Search {
        private volatile boolean ended;
        private volatile double share;

        /** Written once: one of the two that search may still go on for a moment when the other has failed. */
        private volatile Optional<State> result = Optional.empty();

        State state() {
            return result.orElseGet(() -> new State(share, ended, Optional.empty(), ""));
        }

        boolean goesOn(double over) {
            share = over;
            return !ended;
        }

        void run(FindBestSetUp find, FindBestSetUp.Question question) {
            State over = new State(1, false, Optional.empty(), "a fault of the program; nothing was changed");
            try {
                over = new State(1, ended, Optional.of(find.answer(question, this::goesOn)), "");
            } catch (IllegalArgumentException impossible) {
                over = new State(1, ended, Optional.empty(), String.valueOf(impossible.getMessage()));
            } finally {
                result = Optional.of(over);
            }
        }
    }

    /** Begins a search. Returns its number. */
    public synchronized long begin(FindBestSetUp.Question question) {
        last++;
        Search search = new Search();
        searches.put(last, search);
        Iterator<Search> oldest = searches.values().iterator();
        while (searches.size() > REMEMBERED) {
            oldest.next().ended = true;
            oldest.remove();
        }
        worker.execute(() -> search.run(findBestSetUp, question));
        return last;
    }

    /** How a search stands; empty when it is not remembered. */
    public synchronized Optional<State> look(long number) {
        return Optional.ofNullable(searches.get(number)).map(search -> search.state());
    }

    /** Ends a search with what it has found; harmless when it is over. */
    public synchronized void end(long number) {
        Search search = searches.get(number);
        if (search != null) {
            search.ended = true;
        }
    }
}
