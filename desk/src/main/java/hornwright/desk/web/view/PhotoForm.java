package hornwright.desk.web.view;

import java.util.List;

/** Where a photograph is put in. */
public record PhotoForm(
        String action,
        String back,
        long seq,
        String fresh,
        String place,
        List<Section> shots,
        List<PlacePanel.Option> moments) {
    public PhotoForm {
        shots = List.copyOf(shots);
        moments = List.copyOf(moments);
    }

    /** Shots that are photographed together. */
    public record Section(String title, List<PlacePanel.Option> options) {
        public Section {
            options = List.copyOf(options);
        }
    }
}
