using PlotAgronomy.Land;
using UnitsNet;

namespace PlotAgronomy.PlanFiles;

/// <summary>Reads the plot of a plan file.</summary>
internal static class PlotReader
{
    internal static Plot? Read(PlanObject plot)
    {
        var measured = Measured(plot);
        var standing = plot.Object("standsNow");
        var coverKind = standing is null ? null : KindReader.Read(standing, "kind");
        var before = KindReader.Read(plot, "grewBefore");
        return plot.Text("name") is { } name && measured is not null && plot.Choice("use", PlanVocabulary.Uses) is CropFate use
            ? new Plot
            {
                Name = name,
                Measured = measured,
                Place = plot.Chosen("place", PlanVocabulary.Places),
                PlantingRegion = plot.Chosen("plantingRegion", PlanVocabulary.PlantingRegions),
                Texture = plot.Choice("texture", PlanVocabulary.Textures),
                Drainage = plot.Choice("drainage", PlanVocabulary.Drainages),
                Cover = standing?.Choice("cover", PlanVocabulary.Covers) ?? GroundCover.BareGround,
                CoverKind = coverKind,
                CoverShare = standing?.Number("shareOfFullStand") is >= 0 and <= 1 and var share ? share : 0,
                GrewBefore = before,
                IsCarriedOff = use == CropFate.CarriedOff,
            }
            : null;
    }

    private static PlotArea? Measured(PlanObject plot)
    {
        if (plot.Object("sides") is { } sides)
        {
            return OfSides(sides);
        }

        if (plot.Has("outline"))
        {
            var corners = plot.Pairs("outline").ToList();
            return corners.Count < 3
                ? null
                : plot.Try("outline", () =>
                    PlotArea.FromOutline(PlotOutline.FromFixes([.. corners.Select(c => GeoPoint.FromDegrees(c.First, c.Second))]))
                );
        }

        return plot.PositiveAmount<Area>("area", Amounts.TryReadArea, a => a.Acres) is Area area
            ? plot.Try("area", () => PlotArea.Stated(area))
            : null;
    }

    private static PlotArea? OfSides(PlanObject sides) =>
        sides.Choice("shape", PlanVocabulary.PlotForms) switch
        {
            PlotForm.Rectangle => From(sides, ["length", "width"], s => PlotArea.FromRectangle(s[0], s[1])),
            PlotForm.Triangle => From(sides, ["a", "b", "c"], s => PlotArea.FromThreeSides(s[0], s[1], s[2])),
            PlotForm.Trapezoid => From(sides, ["a", "b", "length"], s => PlotArea.FromTrapezoid(s[0], s[1], s[2])),
            PlotForm.Circle => From(sides, ["radius"], s => PlotArea.FromCircle(s[0])),
            _ => null,
        };

    /// <summary>Reads just the sides a form needs; a missing one or one too many is a mistake.</summary>
    private static PlotArea? From(PlanObject sides, string[] needed, Func<MeasuredLength[], PlotArea> area)
    {
        string form = sides.Text("shape")!;
        foreach (string name in needed.Where(n => !sides.Has(n)))
        {
            sides.Report("shape", $"a {form} needs the side '{name}'");
        }

        foreach (
            var (name, key, _) in sides.Node.Members.Where(m =>
                m.Name != "shape" && PlotShapes.Sides.Fields.Any(f => f.Name == m.Name) && !needed.Contains(m.Name)
            )
        )
        {
            sides.Report(name, $"a {form} has no side '{key.Text}'; it needs {string.Join(", ", needed)}");
        }

        var lengths = needed.Select(n => sides.PositiveAmount<Length>(n, Amounts.TryReadLength, l => l.Feet)).ToList();
        return lengths.Any(l => l is null)
            ? null
            : sides.Try("shape", () => area([.. lengths.Select(l => MeasuredLength.FromLength(l!.Value))]));
    }
}
