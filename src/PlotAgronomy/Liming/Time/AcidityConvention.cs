namespace PlotAgronomy.Liming;

/// <summary>How much of the acid of nitrogen fertilizers is thought to stay in the soil. The two conventions are never
/// mixed.</summary>
public enum AcidityConvention
{
    /// <summary>As published for planning: plants take up part of the nitrate and give base back (urea 1.8, ammonium sulfate 5.4
    /// lb carbonate per lb N).</summary>
    PlantsTakeUpNitrate,

    /// <summary>Worst case, leached sand: all acid stays (one hydrogen ion per N of urea: 3.57 lb carbonate per lb N).</summary>
    AllAcidStays,
}
