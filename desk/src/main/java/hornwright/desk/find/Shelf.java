package hornwright.desk.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The texts of one thing, such as a horn, with every word and where it stands. Immutable. */
public final class Shelf {
    private static final int WHOLE = 2;
    private static final int IN_TITLE = 3;

    private final List<Text> texts;
    private final String[] words;
    private final int[][] at;
    private final int[][] inTitle;

    private Shelf(List<Text> texts, String[] words, int[][] at, int[][] inTitle) {
        this.texts = texts;
        this.words = words;
        this.at = at;
        this.inTitle = inTitle;
    }

    public static Shelf of(List<Text> texts) {
        Map<String, List<Integer>> at = new TreeMap<>();
        Map<String, List<Integer>> titles = new TreeMap<>();
        for (int i = 0; i < texts.size(); i++) {
            Text text = texts.get(i);
            note(titles, text.title(), i);
            note(at, text.title() + " " + text.detail() + " " + text.more(), i);
        }
        String[] words = at.keySet().toArray(String[]::new);
        int[][] postings = new int[words.length][];
        int[][] inTitle = new int[words.length][];
        for (int i = 0; i < words.length; i++) {
            postings[i] = ints(at.getOrDefault(words[i], List.of()));
            inTitle[i] = ints(titles.getOrDefault(words[i], List.of()));
        }
        return new Shelf(List.copyOf(texts), words, postings, inTitle);
    }

    public int size() {
        return texts.size();
    }

    /** The texts that hold every one of these words or beginnings of words, with how well; in no order. */
    List<Hit> find(List<String> wanted) {
        Map<Integer, Integer> fitting = new HashMap<>();
        for (int i = 0; i < wanted.size(); i++) {
            Map<Integer, Integer> of = scores(wanted.get(i));
            if (of.isEmpty()) {
                return List.of();
            }
            if (i == 0) {
                fitting = of;
            } else {
                fitting.keySet().retainAll(of.keySet());
                fitting.replaceAll((text, score) -> score + of.getOrDefault(text, 0));
            }
        }
        List<Hit> hits = new ArrayList<>(fitting.size());
        fitting.forEach((text, score) -> hits.add(new Hit(texts.get(text), score)));
        return hits;
    }

    private Map<Integer, Integer> scores(String beginning) {
        int from = Arrays.binarySearch(words, beginning);
        Map<Integer, Integer> scores = new HashMap<>();
        for (int i = from < 0 ? -from - 1 : from; i < words.length && words[i].startsWith(beginning); i++) {
            int whole = words[i].length() == beginning.length() ? WHOLE : 0;
            for (int text : at[i]) {
                scores.merge(text, 1 + whole, Math::max);
            }
            for (int text : inTitle[i]) {
                scores.merge(text, 1 + whole + IN_TITLE, Math::max);
            }
        }
        return scores;
    }

    private static void note(Map<String, List<Integer>> at, String text, int index) {
        for (String word : Fold.words(text)) {
            List<Integer> there = at.computeIfAbsent(word, none -> new ArrayList<>());
            if (there.isEmpty() || there.getLast() != index) {
                there.add(index);
            }
        }
    }

    private static int[] ints(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }
}
