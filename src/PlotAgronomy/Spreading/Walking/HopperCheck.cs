using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>What was left in the hopper after some of the plot was sown.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class HopperCheck
{
    private HopperCheck(double acresDone, double poundsLeft, bool settingChanged)
    {
        AcresDone = acresDone;
        PoundsLeft = poundsLeft;
        SettingChanged = settingChanged;
    }

    /// <summary>Gets the ground sown since the start.</summary>
    internal double AcresDone { get; }

    /// <summary>Gets the weight left of the whole load, in the hopper and in the bag.</summary>
    internal double PoundsLeft { get; }

    /// <summary>Gets a value indicating whether gate or pace was changed after this reading.</summary>
    internal bool SettingChanged { get; }

    /// <summary>Creates a reading.</summary>
    /// <param name="done">Ground sown since the start; above 0.</param>
    /// <param name="left">Weight left of the whole load; at least 0.</param>
    /// <param name="settingChanged">True when gate or pace was changed after this reading.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static HopperCheck FromWeighing(Area done, Mass left, bool settingChanged = false)
    {
        double acres = done.Acres;
        double pounds = left.Pounds;
        return new HopperCheck(
            Guard.Above(acres, 0, "ac", nameof(done)),
            Guard.AtLeast(pounds, 0, "lb", nameof(left)),
            settingChanged
        );
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(PoundsLeft, 2)} lb left after {Amounts.Print(AcresDone, 3)} ac";
}
