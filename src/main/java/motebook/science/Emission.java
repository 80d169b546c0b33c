package motebook.science;

/**
 * From the reference figure of an operation to the dust it makes.
 *
 * <p>The reference figure is the mean near-field inhalable concentration over the first 60 min of
 * continuous work, from clean air, in the default shop, without any control. Per unit of emission
 * that mean is {@code M = 1/β + mean room rise} for each kind of dust. Asking that a share {@link
 * #FINE_SHARE_OF_AIR} of the inhalable dust in that air is fine gives the fine share of the
 * emission {@code φ = 0.167·Mc/(0.833·Mf + 0.167·Mc)}, and {@code U = (1−φ)Mc + φMf} turns a
 * concentration into an emission: {@code G = reference × material × pass / U}. Derived on the
 * listed equations.
 */
public final class Emission {
  /** Volume of the default shop, m³. */
  public static final double SHOP_VOLUME_M3 = 100;

  /** Air changes of the default shop with doors closed, per hour. */
  public static final double SHOP_AIR_CHANGES_PER_HOUR = 1;

  /** Random air speed in the default shop, m/min. Anthony and Anderson 2013: 0.1 m/s and above. */
  public static final double SHOP_AIR_SPEED_M_PER_MIN = 6;

  /** Respirable share of inhalable wood dust in air. Kalliny 2008, J Occup Environ Hyg 5:501. */
  public static final double FINE_SHARE_OF_AIR = 0.167;

  private static final double REFERENCE_MINUTES = 60;
  private static final double MEAN_COARSE = meanPerUnit(Dust.COARSE);
  private static final double MEAN_FINE = meanPerUnit(Dust.FINE);

  /** Fine share φ of every emission, about 0.1031. */
  public static final double FINE_SHARE =
      FINE_SHARE_OF_AIR
          * MEAN_COARSE
          / ((1 - FINE_SHARE_OF_AIR) * MEAN_FINE + FINE_SHARE_OF_AIR * MEAN_COARSE);

  /** Reference concentration per emission U, about 0.17668 min/m³. */
  public static final double MIN_PER_M3 = (1 - FINE_SHARE) * MEAN_COARSE + FINE_SHARE * MEAN_FINE;

  private Emission() {}

  private static double meanPerUnit(Dust dust) {
    double loss = Loss.rate(SHOP_AIR_CHANGES_PER_HOUR, dust.settlingPerHour(), 0, SHOP_VOLUME_M3);
    double roomMean =
        Relaxation.integral(0, 1 / SHOP_VOLUME_M3, loss, REFERENCE_MINUTES) / REFERENCE_MINUTES;
    return 1 / NearField.exchangeM3PerMin(SHOP_AIR_SPEED_M_PER_MIN) + roomMean;
  }

  /**
   * Inhalable dust that an operation makes, mg/min.
   *
   * @param referenceMgPerM3 the operation's reference figure, ≥ 0
   * @param materialFactor ≥ 0
   * @param passFactor share that the control lets through, 1 without one
   */
  public static double mgPerMin(double referenceMgPerM3, double materialFactor, double passFactor) {
    return referenceMgPerM3 * materialFactor * passFactor / MIN_PER_M3;
  }

  /** The share of every emission that is of one kind. */
  public static double share(Dust dust) {
    return dust == Dust.FINE ? FINE_SHARE : 1 - FINE_SHARE;
  }
}
