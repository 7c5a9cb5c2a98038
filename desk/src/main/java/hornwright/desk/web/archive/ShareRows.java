package hornwright.desk.web.archive;

import hornwright.bench.archive.Archive;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Voice;
import hornwright.desk.journal.Card;
import hornwright.desk.use.Keyworks;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Writes what can leave, and by what a part of it is cut. */
public final class ShareRows {
    private ShareRows() {}

    public static SharePage.Cut cut(Collection<Archive> archives) {
        TreeSet<String> origins = new TreeSet<>();
        Map<String, String> places = new TreeMap<>();
        for (Archive archive : archives) {
            archive.statements()
                    .forEach(said -> origins.add(said.evidence().origin().id()));
            archive.fittings()
                    .forEach(said -> origins.add(said.evidence().origin().id()));
            archive.observations().forEach(look -> places.put(look.place(), look.place()));
            archive.statements().forEach(said -> places.put(said.place(), said.place()));
        }
        Stream.of(Voice.values())
                .flatMap(voice -> Keyworks.ofVoice(voice).stream())
                .map(Keywork::places)
                .forEach(of -> of.forEach(place -> places.replace(place.id(), OnBench.capital(place.display()))));
        return new SharePage.Cut(
                options("every maker", archives.stream().map(Archive::maker).toList()),
                options("every place", places),
                options("everybody", List.copyOf(origins)));
    }

    private static List<PlacePanel.Option> options(String all, List<String> words) {
        Map<String, String> same = new TreeMap<>();
        words.forEach(word -> same.put(word, word));
        return options(all, same);
    }

    private static List<PlacePanel.Option> options(String all, Map<String, String> words) {
        List<PlacePanel.Option> options = new ArrayList<>();
        options.add(new PlacePanel.Option("", all, true));
        words.forEach((word, label) -> options.add(new PlacePanel.Option(word, label, false)));
        return options;
    }

    public static List<PlacePanel.Option> horns(List<Card> cards) {
        return cards.stream()
                .map(card -> new PlacePanel.Option(card.job(), OnBench.capital(card.title()), false))
                .toList();
    }
}
