using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Land;

/// <summary>What the readers of all formats share: a checked coordinate and an outline, or the place of the mistake.</summary>
internal static class OutlineParts
{
    /// <summary>The longest text that is read, in characters.</summary>
    internal const int LongestText = 20_000_000;

    /// <summary>A coordinate in its range, or the reason why it is not one.</summary>
    internal static GeoPoint Fix(double latitude, double longitude, string file, int line, string field)
    {
        if (!double.IsFinite(latitude) || Math.Abs(latitude) > 90)
        {
            throw new DataFormatException(
                file,
                line,
                field,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"latitude {latitude} is beyond 90 degrees: are latitude and longitude in the right order, "
                        + $"and in decimal degrees (WGS84)?"
                )
            );
        }

        return double.IsFinite(longitude) && Math.Abs(longitude) <= 180
            ? GeoPoint.FromDegrees(latitude, longitude)
            : throw new DataFormatException(
                file,
                line,
                field,
                FormattableString.Invariant($"longitude {longitude} is beyond 180 degrees: expected decimal degrees (WGS84)")
            );
    }

    internal static PlotOutline Outline(
        IReadOnlyList<GeoPoint> fixes,
        string name,
        IEnumerable<Finding> noticed,
        string file,
        int line,
        string field
    )
    {
        string problem = "no position";
        return (fixes.Count == 0 ? null : PlotOutline.TryFromFixes(fixes, name, noticed, out problem))
            ?? throw new DataFormatException(file, line, field, problem);
    }
}
