using System.Collections.Immutable;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Makes pass plans.</summary>
internal static class PassPlanner
{
    /// <summary>More strips or fillings than anyone drives: a swath or hopper in the wrong unit.</summary>
    private const int Most = 10_000;

    internal static PassPlan Lay(PlotOutline outline, PassOptions options)
    {
        double swathFeet = options.SwathFeet,
            poundsPerSquareFoot = options.PoundsPerAcre / ExactUnits.SquareFeetPerAcre;
        _ = options.MilesPerHour + options.TurnMinutes + options.RefillMinutes;
        Limit(outline.Perimeter.Feet / 2 / swathFeet, "Swath", "strips", options);
        Limit(
            options.PoundsPerAcre * outline.Area.Acres / (options.HopperPounds ?? double.PositiveInfinity),
            "HopperHolds",
            "fillings",
            options
        );
        var lap = options.HeadlandLap ? outline.Inset(Length.FromFeet(swathFeet / 2)).Parts : [];
        ImmutableArray<ImmutableArray<PlanePoint>> rings = lap.IsEmpty
            ? [outline.Corners]
            : [.. outline.Inset(Length.FromFeet(swathFeet)).Parts.Select(p => p.Corners)];
        double lapSquareFeet = lap.IsEmpty ? 0 : outline.Area.SquareFeet - rings.Sum(r => LandMath.SignedSquareFeet(r.AsSpan()));
        var layout = rings.IsEmpty
            ? null
            : Layout(outline, rings, options, lap.IsEmpty ? options.FirstPass : FirstPassPlacement.HalfSpacingInside);
        double spacingFeet = layout?.SpacingFeet ?? swathFeet;
        ImmutableArray<SpreaderPass> passes = layout is null
            ? []
            : [.. layout.Passes.Select((p, i) => Pass(i + 1, p, spacingFeet * poundsPerSquareFoot))];

        double coveredSquareFeet = lapSquareFeet + (layout?.LengthFeet ?? 0) * spacingFeet;
        double outsideShare = Math.Max(0, coveredSquareFeet / outline.Area.SquareFeet - 1);
        var loads = Loads(lapSquareFeet * poundsPerSquareFoot, passes, options);
        double pathMiles = (lap.Sum(l => l.Perimeter.Feet) + (layout?.LengthFeet ?? 0)) / ExactUnits.FeetPerMile;
        return new PassPlan
        {
            Outline = outline,
            Options = options,
            Passes = passes,
            Spacing = Length.FromFeet(spacingFeet),
            Direction = Compass(layout?.AlongDegrees ?? 0),
            Lap = lap,
            Loads = loads,
            OutsideShare = outsideShare,
            Findings = Finding.InOrder([
                .. outline.Findings,
                .. LapRemarks(outline, lap, options, spacingFeet),
                .. Remarks(options, lap.IsEmpty, spacingFeet, pathMiles, outsideShare),
            ]),
        };
    }

    private static void Limit(double count, string property, string what, PassOptions options)
    {
        if (count > Most)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"{property}: more than {Most} {what} on this plot; is its unit right?"),
                nameof(options)
            );
        }
    }

    /// <summary>Direction counter-clockwise from east as a bearing clockwise from north.</summary>
    private static Bearing Compass(double degreesFromEast) => Bearing.FromDegrees((450 - degreesFromEast) % 360);

    private static PassLayout Layout(
        PlotOutline outline,
        ImmutableArray<ImmutableArray<PlanePoint>> rings,
        PassOptions options,
        FirstPassPlacement first
    ) =>
        options.Along is { } along
            ? PassLayout.Along((450 - along.Degrees) % 360, rings, options.SwathFeet, first)
            : PassLayout.FewestTurns(outline.Corners, rings, options.SwathFeet, first);

    private static SpreaderPass Pass(int number, (int Strip, PlanePoint Start, PlanePoint End) pass, double poundsPerFoot)
    {
        double feet = LandMath.DistanceFeet(pass.Start, pass.End);
        return new SpreaderPass
        {
            Number = number,
            Strip = pass.Strip,
            Start = pass.Start,
            End = pass.End,
            Seed = Mass.FromPounds(feet * poundsPerFoot),
        };
    }

    /// <summary>Equal fillings, as few as the hopper allows.</summary>
    private static ImmutableArray<HopperLoad> Loads(double lapPounds, ImmutableArray<SpreaderPass> passes, PassOptions options)
    {
        double[] used = [lapPounds, .. passes.Select(p => p.Seed.Pounds)];
        double totalPounds = used.Sum();
        int count = options.HopperPounds is { } hopper ? WholePackages.RoundUp(totalPounds / hopper) : 1;
        var loads = ImmutableArray.CreateBuilder<HopperLoad>(count);
        double before = 0;
        for (int i = 1; i <= count; i++)
        {
            // The last filling takes the remainder, so that the loads sum to the whole.
            double pounds = i < count ? totalPounds / count : totalPounds - before;
            before += pounds;
            var mass = Mass.FromPounds(pounds);
            loads.Add(
                new HopperLoad
                {
                    Number = i,
                    Mass = mass,
                    Buckets = options.Bucket?.Count(mass),
                    RunsOutInPass = i == count ? passes.Length : PassAt(used, before),
                }
            );
        }

        return loads.ToImmutable();
    }

    /// <summary>The pass on which so many pounds in all are used up; 0 is the lap.</summary>
    private static int PassAt(double[] used, double pounds)
    {
        double sum = 0;
        for (int pass = 0; pass < used.Length; pass++)
        {
            sum += used[pass];
            if (!Tolerance.IsBelow(sum, pounds))
            {
                return pass;
            }
        }

        return used.Length - 1;
    }

    private static IEnumerable<Finding> LapRemarks(
        PlotOutline outline,
        ImmutableArray<PlotOutline> lap,
        PassOptions options,
        double spacingFeet
    )
    {
        double swathFeet = options.SwathFeet;
        if (options.HeadlandLap && lap.IsEmpty)
        {
            yield return FindingCatalog.Create("spread-lap-no-room", ("swath", Amounts.Print(swathFeet, 2)));
        }

        if (!lap.IsEmpty && Tolerance.IsAbove(swathFeet, spacingFeet))
        {
            yield return FindingCatalog.Create(
                "spread-lap-keeps-swath",
                ("spacing", Amounts.Print(spacingFeet, 2)),
                ("swath", Amounts.Print(swathFeet, 2))
            );
        }

        double missedFeet = lap.IsEmpty ? 0 : EdgeBeyond(outline, lap, swathFeet);
        if (missedFeet > swathFeet / 2)
        {
            yield return FindingCatalog.Create(
                "spread-lap-misses",
                ("edge", Amounts.Print(missedFeet, 0)),
                ("swath", Amounts.Print(swathFeet, 1))
            );
        }
    }

    /// <summary>Feet of the plot's edge farther than a swath from every lap: necks and spikes too narrow for one.</summary>
    private static double EdgeBeyond(PlotOutline outline, ImmutableArray<PlotOutline> laps, double swathFeet)
    {
        double beyond = 0;
        foreach (var (from, to) in Sides(outline))
        {
            double feet = LandMath.DistanceFeet(from, to);
            int pieces = (int)Math.Ceiling(4 * feet / swathFeet);
            for (int i = 0; i < pieces; i++)
            {
                double part = (i + 0.5) / pieces;
                var place = new PlanePoint(
                    from.EastFeet + part * (to.EastFeet - from.EastFeet),
                    from.NorthFeet + part * (to.NorthFeet - from.NorthFeet)
                );
                if (!laps.Any(lap => Sides(lap).Any(s => LandMath.DistanceFeet(place, s.From, s.To) <= swathFeet)))
                {
                    beyond += feet / pieces;
                }
            }
        }

        return beyond;
    }

    private static IEnumerable<(PlanePoint From, PlanePoint To)> Sides(PlotOutline ring) =>
        ring.Corners.Select((corner, i) => (corner, ring.Corners[(i + 1) % ring.Corners.Length]));

    private static IEnumerable<Finding> Remarks(
        PassOptions options,
        bool withoutLap,
        double spacingFeet,
        double pathMiles,
        double outsideShare
    )
    {
        double swathFeet = options.SwathFeet;
        if (Tolerance.IsAbove(swathFeet, spacingFeet))
        {
            yield return FindingCatalog.Create(
                "spread-spacing-evened",
                ("spacing", Amounts.Print(spacingFeet, 2)),
                ("swath", Amounts.Print(swathFeet, 2)),
                ("change", Amounts.Print((swathFeet / spacingFeet - 1) * 100, 1))
            );
        }

        double limit = SpreadingConstants.All["outside-share"];
        if (Tolerance.IsAbove(100 * outsideShare, limit))
        {
            yield return FindingCatalog.Create(
                "spread-outside",
                ("percent", Amounts.Print(100 * outsideShare, 1)),
                ("limit", Amounts.Print(limit, 0))
            );
        }

        double walk = SpreadingConstants.All["walk-on-foot"];
        if (Tolerance.IsAbove(pathMiles, walk))
        {
            yield return FindingCatalog.Create(
                "spread-long-walk",
                ("miles", Amounts.Print(pathMiles, 1)),
                ("limit", Amounts.Print(walk, 0)),
                ("swath", Amounts.Print(swathFeet, 1))
            );
        }

        if (options.FirstPass == FirstPassPlacement.OnEdge && withoutLap)
        {
            yield return FindingCatalog.Create("spread-first-pass-on-edge");
        }
    }
}
