using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Land;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Spreading;
using UnitsNet;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>The plot: sides, outline or area, its soil, what stands there.</summary>
internal sealed class PlotShape : PlanShape<Plot>
{
    private const string CoverInWords =
        "What it is. legume-stand, small-grain: what was sown and stands. smother-crop: sown to be worked in. weeds: fallow. "
        + "grass-sod: a lawn, meadow or pasture.";

    private readonly PlanField<ImmutableArray<GeoPoint>> outline;
    private readonly PlanField<PlotArea> sides;
    private readonly PlanField<string> file;

    /// <param name="pace">Field of the plan: the owner's own pace.</param>
    internal PlotShape(PlanField<PaceCalibration> pace)
        : base("plot", "The plot of land.")
    {
        var name = Required("name", Text("Hollow field"), "Name of the plot.", p => p.Name);
        var measured = new SidesShape(pace);
        sides = Optional("sides", measured, "Measured sides.", p => Sided(p.Measured), PlanNeed.OneOf)
            .Answers(LandCodes.AskOutline);
        const string Together = "Pieces added and taken off; how they lie to each other is not known, so there is no pass plan.";
        var pieces = Optional(
            "pieces",
            List(new PieceShape(measured), fewest: 1),
            Together,
            p => p.Measured.Pieces is { IsEmpty: false } put && !HasOtherForm(p) ? put : null,
            PlanNeed.OneOf
        );
        var fix = new PlanPair().As(
            c => GeoPoint.FromDegrees(c.Latitude, c.Longitude),
            p => (p.LatitudeDegrees, p.LongitudeDegrees)
        );
        outline = Optional(
            "outline",
            List(fix, fewest: 3),
            "Walked corners in order.",
            p => p.Measured.Sides is null && p.Measured.Outline is { Origin: not null } walked ? walked.Fixes : null,
            PlanNeed.OneOf
        );
        const string ByName =
            "Name of a file with the walked outline (GPX, GeoJSON, or latitude and longitude), beside the plan.";
        file = Optional("outlineFile", Text("hollow-field.gpx"), ByName, _ => null, PlanNeed.OneOf);
        var area = Optional(
            "area",
            Area("0.62 ac"),
            "Area alone; without sides there is no pass plan.",
            p => p.Measured.Method == AreaMethod.Stated ? p.Area : null,
            PlanNeed.OneOf
        );
        Unsaid("a class of soil seen on the plot", p => p.SoilClass is not null);
        Unsaid("dry or thin ground", p => p.IsDryOrThin);
        Unsaid("an area corrected or compared after it was measured", p => p.Measured.IsAltered);
        Unsaid("an error of the area", p =>
            p.Measured is { RelativeError: not null } and ({ IsPutTogether: false } or { IsAltered: true })
        );
        Unsaid("an error of a taped side", p => p.Measured.Measured.Any(l => l.HasError && !l.IsPaced));
        Unsaid("an outline in feet", p => p.Measured.Method == AreaMethod.MapOutline);
        Unsaid("a piece of another form than its own", HasOtherForm);
        Unsaid("sides of another form than its own", p =>
            p.Measured is { Method: AreaMethod.Sides or AreaMethod.Paces, IsPutTogether: false }
        );

        var places = Choice(Place.All, p => p.Name);
        var place = Optional("place", places, "State or province the plot lies in.", p => p.Place)
            .Answers(CalendarCodes.AskWhere);
        var region = Optional(
            "plantingRegion",
            Choice(PlantingRegion.All, r => r.Name),
            "Region by which planting dates are found; left out, that of the place.",
            p => p.PlantingRegion == p.Place?.PlantingRegion ? null : p.PlantingRegion
        ).Answers(SeedCodes.AskRegion);
        var texture = Optional("texture", Choice(SoilWords.Textures), "Soil texture.", p => p.Texture)
            .Answers(SoilCodes.AskTexture);
        var drainage = Optional(
            "drainage",
            Choice(DrainageTolerance.Classes),
            "How the soil drains: how long water stands after a heavy rain.",
            p => p.Drainage
        ).Answers(SeedCodes.AskDrainage);
        const string Near = "Whether a ditch, stream, pond or well lies near the plot; asked for where it is left out.";
        var water = Optional("nearWater", Flag, Near, p => p.IsNearWater).Answers(FertilizerCodes.AskWater);

        var standing = new PlanGroup<Plot>("standsNow", "What grows on the plot today.");
        var cover = standing.Required("cover", Hyphened<GroundCover>(), CoverInWords, p => p.Cover);
        const string Stands = "Kind that stands there, by common name.";
        var coverKind = standing.Optional("kind", Kind("winter rye"), Stands, p => p.CoverKind);
        var coverShare = standing.Optional(
            "shareOfFullStand",
            Number(0.0, 1),
            "How much of a full stand it still is, 0 to 1.",
            p => p.CoverShare == 0 ? null : p.CoverShare
        );
        var standsNow = Optional("standsNow", standing, "What stands there now; bare ground when left out.", p =>
            p is { Cover: GroundCover.BareGround, CoverKind: null, CoverShare: 0 } ? null : p
        );
        const string Before = "Kind that was sown there the season before, by common name; left out where none was.";
        var grewBefore = Optional("grewBefore", Kind("soybean"), Before, p => p.GrewBefore);
        IsCarriedOff = Required(
            "use",
            Choice("browsed", "cut-and-carried-off"),
            "Whether the crop is only browsed, as a food plot is, or cut and carried off, as hay.",
            p => p.IsCarriedOff
        );

        ReadAs(at =>
            new()
            {
                Name = at.Get(name),
                Measured =
                    at.Has(sides) ? at.Get(sides)
                    : at.Has(pieces) ? PutTogether(at, pieces)
                    : at.Has(file) ? PlotArea.FromOutline(PlanOutlineFile.Read(at, file, at.Find(name)))
                    : at.Has(outline) ? at.Try(outline, () => PlotArea.FromOutline(PlotOutline.FromFixes(at.Get(outline))))
                    : at.Try(area, () => PlotArea.Stated(at.Get(area))),
                Place = at.Find(place),
                PlantingRegion = at.Find(region),
                Texture = at.Maybe(texture),
                Drainage = at.Maybe(drainage),
                IsNearWater = at.Maybe(water),
                Cover = at.Find(standsNow)?.Find(cover) ?? GroundCover.BareGround,
                CoverKind = at.Find(standsNow)?.Find(coverKind),
                CoverShare = at.Find(standsNow)?.Find(coverShare) ?? 0,
                GrewBefore = at.Find(grewBefore),
                IsCarriedOff = at.Get(IsCarriedOff),
            }
        );
    }

    internal PlanField<bool> IsCarriedOff { get; }

    /// <summary>Ground so wide that no one drives its passes is a mistyped corner, a side or a swath in a wrong unit.</summary>
    internal void CheckStrips(PlanPart at, Plot? plot, Length swath)
    {
        if (plot?.Measured.Outline is not { } walked || FieldPasses.HasTooManyStrips(walked, swath) is false)
        {
            return;
        }

        string around =
            $"the plot is {Amounts.Print(walked.Perimeter, "ft", 0)} around, too much for a swath of "
            + Amounts.Print(swath, "ft", 1);
        if (at.Has(outline))
        {
            var fixes = at.Get(outline);
            double latitude = Middle(fixes.Select(f => f.LatitudeDegrees)),
                longitude = Middle(fixes.Select(f => f.LongitudeDegrees));
            var farthest = fixes.MaxBy(f => Math.Abs(f.LatitudeDegrees - latitude) + Math.Abs(f.LongitudeDegrees - longitude));
            at.ReportItem(outline, fixes.IndexOf(farthest), $"{around}; this corner lies farthest off: is a digit wrong?");
        }
        else
        {
            at.Report(at.Has(file) ? file : sides, $"{around}; is a unit wrong?");
        }
    }

    private static PlotArea PutTogether(PlanPart at, PlanField<ImmutableArray<(bool IsAdded, PlotArea Piece)>> pieces) =>
        at.IsWhole(pieces) ? at.Try(pieces, () => PlotArea.FromPieces(at.Get(pieces))) : throw PlanPart.Unread();

    private static double Middle(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }

    private static bool HasOtherForm(Plot plot) => plot.Measured.Pieces.Any(p => p.Piece.Sides is null);

    private static PlotArea? Sided(PlotArea area) => area.Sides is null ? null : area;
}
