using PlotAgronomy.Land;

namespace PlotAgronomy.Spreading;

/// <summary>How many strips and fillings are still a plot and no slip of a unit.</summary>
internal static class StripLimits
{
    /// <summary>No outline is wider than half the way round it.</summary>
    internal static double StripsAtMost(PlotOutline outline, double swathFeet) => outline.PerimeterFeet / 2 / swathFeet;

    /// <summary>Refuses more strips or fillings than anyone drives.</summary>
    internal static void Refuse(double count, string property, string what, string argument = "request")
    {
        double most = SpreadingConstants.All["most-strips"];
        if (count > most)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"{property}: more than {most} {what} on this plot; is its unit right?"),
                argument
            );
        }
    }
}
