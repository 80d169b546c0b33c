package motebook.desk;

import motebook.model.Upkeep;

/** What settles a thing that is due and needs nothing more to be said. */
public sealed interface Remedy {
  /** What is asked before it is done. */
  String asked();

  /** A fresh element in the place of one on a mask. */
  record Change(String element) implements Remedy {
    @Override
    public String asked() {
      return element + ": changed for fresh, on the mask from today?";
    }
  }

  /** A spare is thrown away. */
  record Discard(String element) implements Remedy {
    @Override
    public String asked() {
      return "Is the spare " + element + " thrown away?";
    }
  }

  /** A filter of the shop was seen to. */
  record Kept(String filter, Upkeep.What what) implements Remedy {
    @Override
    public String asked() {
      return "Is " + filter + " " + what.key() + " now?";
    }
  }

  /** A medical evaluation cleared the person. */
  record Cleared(String person) implements Remedy {
    @Override
    public String asked() {
      return "Has " + person + " been cleared by a medical evaluation?";
    }
  }

  /** The person was trained. */
  record Trained(String person) implements Remedy {
    @Override
    public String asked() {
      return "Has " + person + " been trained in wearing and keeping respirators?";
    }
  }
}
