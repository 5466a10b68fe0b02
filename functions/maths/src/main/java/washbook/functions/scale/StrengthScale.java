package washbook.functions.scale;

import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.Solve;

/** The scales on which the strength of a spirit is given; all meet at the mass fraction. */
public enum StrengthScale {
  /** % vol at 20 °C. */
  ABV {
    @Override
    public double toMassFraction(double value) {
      return EthanolWater.massFraction(value);
    }

    @Override
    public double fromMassFraction(double p) {
      return EthanolWater.percentVolume(p);
    }
  },
  /** % by mass. */
  ABW {
    @Override
    public double toMassFraction(double value) {
      return value / 100;
    }

    @Override
    public double fromMassFraction(double p) {
      return 100 * p;
    }
  },
  /** Twice the % vol at 60 °F; 27 CFR 30.11. */
  PROOFUS {
    @Override
    public double toMassFraction(double value) {
      return massFractionAt60F(value / 2);
    }

    @Override
    public double fromMassFraction(double p) {
      return 2 * percentVolumeAt60F(p);
    }
  },
  /**
   * 100 for proof spirit, which weighs 12/13 of its volume of water at 51 °F (Alcoholic Liquor
   * Duties Act 1979, section 2(2)); in proportion to the % vol at 60 °F.
   */
  PROOFUK {
    @Override
    public double toMassFraction(double value) {
      return massFractionAt60F(value / 100 * PROOF_SPIRIT);
    }

    @Override
    public double fromMassFraction(double p) {
      return 100 * percentVolumeAt60F(p) / PROOF_SPIRIT;
    }
  },
  /** Density at 20 °C, kg/m3. */
  KGM3 {
    @Override
    public double toMassFraction(double value) {
      return Solve.root(
          p -> EthanolWater.density(p, 20) - value, EthanolWater::densitySlope20, 0.5, 0, 1);
    }

    @Override
    public double fromMassFraction(double p) {
      return EthanolWater.density(p, 20);
    }
  };

  /** 60 °F. */
  static final double SIXTY_F = 140.0 / 9;

  /** 51 °F. */
  private static final double FIFTY_ONE_F = 95.0 / 9;

  private static final double PROOF_SPIRIT = percentVolumeAt60F(proofSpirit());

  /** Mass fraction of ethanol of a value on this scale. */
  public abstract double toMassFraction(double value);

  /** Value on this scale of a mass fraction. */
  public abstract double fromMassFraction(double p);

  private static double percentVolumeAt60F(double p) {
    return 100 * p * EthanolWater.density(p, SIXTY_F) / EthanolWater.density(1, SIXTY_F);
  }

  private static double massFractionAt60F(double percentVolume) {
    return Solve.root(p -> percentVolumeAt60F(p) - percentVolume, percentVolume / 100 * 0.9, 0, 1);
  }

  private static double proofSpirit() {
    double target = EthanolWater.density(0, FIFTY_ONE_F) * 12 / 13;
    return Solve.root(p -> EthanolWater.density(p, FIFTY_ONE_F) - target, 0.5, 0, 1);
  }
}
