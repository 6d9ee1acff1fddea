using System.Collections.Immutable;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy;

/// <content>Areas inside outlines.</content>
public sealed partial class PlotArea
{
    private const int MostCornersShown = 8;

    /// <summary>The area inside an outline.</summary>
    /// <param name="outline">Outline of the plot.</param>
    /// <param name="fixError">Error of each corner on each axis, one standard deviation; null when not known. A phone's is
    /// typically 3 to 15 m in the open (common practice).</param>
    /// <returns>The map area; see <see cref="OnSlope"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The error is negative, NaN or infinite.</exception>
    /// <remarks>area = half the sum of (x_i y_i+1 - x_i+1 y_i). Standard deviation to first order, corners erring
    /// independently: (error / 2) root(sum of |next corner - previous corner|2). Errors common to all fixes cancel.</remarks>
    public static PlotArea FromOutline(PlotOutline outline, Length? fixError = null)
    {
        ArgumentNullException.ThrowIfNull(outline);
        double? errorFeet = fixError is { } error ? FeetOf(error) : null;
        double? relative = errorFeet is { } feet
            ? LandMath.AreaDeviationSquareFeet(outline.Corners.AsSpan(), feet) / outline.SquareFeet
            : null;
        return new PlotArea
        {
            Area = outline.Area,
            Method = outline.Origin is null ? AreaMethod.MapOutline : AreaMethod.GeographicOutline,
            RelativeError = relative,
            Outline = outline,
            Remarks = () => outline.Findings.Concat(FixRemarks(outline, fixError, relative)),
            Lines = () =>
                [
                    .. TriangleLines(outline.Corners),
                    LandFormulas
                        .All["area-of-outline"]
                        .Line(
                            $"{outline.Corners.Length} corners = {Amounts.Print(outline.Area, "ft2", 0)} = "
                                + Amounts.Print(outline.Area, decimals: 4)
                        )
                        .From(outline.Origin is null ? null : LandConstants.All.Find("plane-high-acres").Origin),
                ],
        };

        static double FeetOf(Length fixError)
        {
            double feet = fixError.Feet;
            return Guard.AtLeast(feet, 0, "ft", nameof(fixError));
        }
    }

    /// <summary>The triangles from the first corner whose areas make that of the outline, while they are few enough to
    /// follow.</summary>
    private static IEnumerable<WorkedLine> TriangleLines(ImmutableArray<PlanePoint> corners)
    {
        if (corners.Length > MostCornersShown)
        {
            yield break;
        }

        for (int i = 1; i + 1 < corners.Length; i++)
        {
            var (second, third) = (corners[i], corners[i + 1]);
            yield return LandFormulas
                .All["triangle-of-outline"]
                .Line(
                    $"{Amounts.Print(LandMath.Cross(corners[0], second, third) / 2, 0)} ft2",
                    ("second", Amounts.Print(i + 1, 0)),
                    ("third", Amounts.Print(i + 2, 0)),
                    ("east of the second", Amounts.Print(second.EastFeet - corners[0].EastFeet, 1)),
                    ("north of the second", Amounts.Print(second.NorthFeet - corners[0].NorthFeet, 1)),
                    ("east of the third", Amounts.Print(third.EastFeet - corners[0].EastFeet, 1)),
                    ("north of the third", Amounts.Print(third.NorthFeet - corners[0].NorthFeet, 1))
                );
        }
    }

    private static IEnumerable<Finding> FixRemarks(PlotOutline outline, Length? fixError, double? relative)
    {
        if (fixError is { } error && relative is { } part)
        {
            yield return FindingCatalog.Create(
                LandCodes.FixError,
                ("error", Amounts.Print(error, "ft", 1)),
                ("percent", $"{Amounts.Print(100 * part, 1)} %"),
                ("low", Amounts.Print(Area.FromSquareFeet(LandMath.LowArea(outline.SquareFeet, part)), decimals: 3)),
                ("high", Amounts.Print(Area.FromSquareFeet(LandMath.HighArea(outline.SquareFeet, part)), decimals: 3))
            );
        }
        else if (outline.Origin is not null)
        {
            yield return UnknownFixError(outline);
        }
    }

    private static Finding UnknownFixError(PlotOutline outline)
    {
        double low = LandConstants.All["phone-error-low-meters"],
            high = LandConstants.All["phone-error-high-meters"];
        string Percent(double meters)
        {
            double feet = meters / ExactUnits.MetersPerFoot;
            double part = 100 * LandMath.AreaDeviationSquareFeet(outline.Corners.AsSpan(), feet) / outline.SquareFeet;
            return $"{Amounts.Print(part, 0)} %";
        }

        return FindingCatalog.Create(
            LandCodes.FixErrorUnknown,
            ("low", Amounts.Print(low, 0)),
            ("high", Amounts.Print(high, 0)),
            ("lowpart", Percent(low)),
            ("highpart", Percent(high))
        );
    }
}
