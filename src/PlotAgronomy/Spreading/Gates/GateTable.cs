using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Gate settings of one machine with the flows one material gave at them.</summary>
/// <remarks>Between the points a monotone cubic (weighted harmonic mean of the secants, SPREAD-S37). Points are sorted by
/// setting,
/// repeats are averaged, and the flow must rise. One reversal counts as measuring noise: its two points are pooled into one at
/// their mean setting and flow, with a finding; more than one is refused. Nothing is answered below the lowest setting, because
/// the flow of seed dies before the gate is shut (SPREAD-S28); above the highest, one step at most, by a power law fitted to
/// the logarithms and made to meet the last point, with a finding.</remarks>
public sealed class GateTable
{
    private readonly MonotoneCurve curve;
    private readonly double? exponent;

    private GateTable(string material, ImmutableArray<GatePoint> points, ImmutableArray<Finding> findings)
    {
        Material = material;
        Points = points;
        Findings = findings;
        curve = new MonotoneCurve([.. points.Select(p => p.Setting)], [.. points.Select(p => p.PoundsPerMinute)]);
        exponent = PowerLaw.Exponent([
            .. points.Where(p => p.Setting > 0 && p.PoundsPerMinute > 0).Select(p => (p.Setting, p.PoundsPerMinute)),
        ]);
    }

    /// <summary>Gets the material.</summary>
    public string Material { get; }

    /// <summary>Gets the points used, by rising setting: repeats averaged, a reversal pooled.</summary>
    public ImmutableArray<GatePoint> Points { get; }

    /// <summary>Gets the remarks on the measurements.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>Gets the smallest flow measured: below it the machine is not known to feed steadily.</summary>
    public MassFlow SmallestFlow => Points[0].Flow;

    private double OneStepAbove => Points[^1].Setting + (Points[^1].Setting - Points[^2].Setting);

    /// <summary>Makes a table of measured points.</summary>
    /// <param name="material">What was in the hopper; not blank.</param>
    /// <param name="points">Settings and flows, in any order; at least two different settings.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">A blank name, fewer than two settings, or flows that fall more than once.</exception>
    public static GateTable Of(string material, IReadOnlyList<GatePoint> points)
    {
        Guard.NotBlank(material);
        var findings = new List<Finding>();
        var sorted = Guard
            .NotEmpty(points)
            .GroupBy(p => p.Setting)
            .OrderBy(g => g.Key)
            .Select(g => (Setting: g.Key, Flow: g.Average(p => p.PoundsPerMinute)))
            .ToList();
        int reversal = FirstReversal(sorted);
        if (reversal > 0)
        {
            findings.Add(
                FindingCatalog.Create(
                    "spread-gate-pooled",
                    ("material", material),
                    ("low", Amounts.Print(sorted[reversal - 1].Setting, 3)),
                    ("high", Amounts.Print(sorted[reversal].Setting, 3))
                )
            );
            var (first, second) = (sorted[reversal - 1], sorted[reversal]);
            sorted.RemoveAt(reversal);
            sorted[reversal - 1] = ((first.Setting + second.Setting) / 2, (first.Flow + second.Flow) / 2);
        }

        if (FirstReversal(sorted) is > 0 and int again)
        {
            throw new ArgumentException(
                $"The flow of {material} falls more than once as the gate opens (again before setting "
                    + $"{Amounts.Print(sorted[again].Setting, 3)}): measure again.",
                nameof(points)
            );
        }

        return sorted.Count >= 2
            ? new GateTable(
                material,
                [.. sorted.Select(p => GatePoint.Of(p.Setting, MassFlow.FromPoundsPerMinute(p.Flow)))],
                [.. findings]
            )
            : throw new ArgumentException("A gate table needs at least two different settings.", nameof(points));
    }

    /// <summary>Flow at a setting.</summary>
    /// <param name="setting">Setting on the user's own scale; a finite pure number.</param>
    /// <returns>The flow, or a finding and no flow outside the table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public GateAnswer FlowAt(double setting)
    {
        Guard.Finite(setting, "a setting of the scale");
        if (setting < Points[0].Setting)
        {
            return Nothing(BelowTable());
        }

        if (setting <= Points[^1].Setting)
        {
            return Answer(setting, curve.At(setting), false);
        }

        return exponent is { } power && !Tolerance.IsAbove(setting, OneStepAbove)
            ? Answer(setting, Points[^1].PoundsPerMinute * Math.Pow(setting / Points[^1].Setting, power), true)
            : Nothing(
                FindingCatalog.Create(
                    "spread-gate-above",
                    ("material", Material),
                    ("highest", Amounts.Print(Points[^1].Setting, 3))
                )
            );
    }

    /// <summary>Setting that gives a flow.</summary>
    /// <param name="flow">Flow wanted; above 0.</param>
    /// <returns>The setting, or a finding and no setting outside the table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public GateAnswer SettingFor(MassFlow flow)
    {
        double wanted = flow.PoundsPerMinute;
        Guard.Above(wanted, 0, "lb/min", nameof(flow));
        if (wanted < Points[0].PoundsPerMinute)
        {
            return Nothing(
                FindingCatalog.Create(
                    "spread-flow-too-small",
                    ("flow", Amounts.Print(wanted, 3)),
                    ("smallest", Amounts.Print(Points[0].PoundsPerMinute, 3)),
                    ("material", Material)
                )
            );
        }

        if (wanted <= Points[^1].PoundsPerMinute)
        {
            return Answer(curve.ArgumentOf(wanted), wanted, false);
        }

        double? setting = exponent is { } power
            ? Points[^1].Setting * Math.Pow(wanted / Points[^1].PoundsPerMinute, 1 / power)
            : null;
        return setting is { } opened && !Tolerance.IsAbove(opened, OneStepAbove)
            ? Answer(opened, wanted, true)
            : Nothing(
                FindingCatalog.Create(
                    "spread-gate-above",
                    ("material", Material),
                    ("highest", Amounts.Print(Points[^1].Setting, 3))
                )
            );
    }

    /// <summary>A first table for another material, or for the same one on another day, from this one and one weighed run of
    /// it.</summary>
    /// <param name="material">The material of the run; not blank.</param>
    /// <param name="setting">Setting of its weighed run, inside this table.</param>
    /// <param name="measured">Flow it gave there; above 0.</param>
    /// <returns>A table whose finding asks for a weighed run at the setting it suggests. No error can be given for it.</returns>
    /// <exception cref="ArgumentException">A blank name.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range, or a setting outside this table.</exception>
    /// <remarks>Every flow is multiplied by measured / table flow at that setting.</remarks>
    public GateTable ScaledToRun(string material, double setting, MassFlow measured)
    {
        double flow = measured.PoundsPerMinute;
        Guard.Above(flow, 0, "lb/min", nameof(measured));
        Guard.Between(setting, Points[0].Setting, Points[^1].Setting, "(a setting inside the table)");
        double factor = flow / curve.At(setting);
        return Scaled(material, p => p * factor);
    }

    /// <summary>A first table for another material by the ratio of bulk densities.</summary>
    /// <param name="material">The other material; not blank.</param>
    /// <param name="thisBulk">Bulk density of this table's material; above 0.</param>
    /// <param name="otherBulk">Bulk density of the other material; above 0.</param>
    /// <returns>A table whose finding asks for a weighed run. No error can be given for it.</returns>
    /// <exception cref="ArgumentException">A blank name.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>Only for seeds of about one size: bulk density takes up most of shape and friction (SPREAD-S57), not
    /// size.</remarks>
    public GateTable ScaledToDensity(string material, Density thisBulk, Density otherBulk)
    {
        double here = thisBulk.PoundsPerCubicFoot;
        double there = otherBulk.PoundsPerCubicFoot;
        double factor = Guard.Above(there, 0, "lb/ft3", nameof(otherBulk)) / Guard.Above(here, 0, "lb/ft3", nameof(thisBulk));
        return Scaled(material, p => p * factor);
    }

    /// <summary>A first table for another material by the orifice law: the same openings seen as round holes.</summary>
    /// <param name="material">The other material; not blank.</param>
    /// <param name="here">Grains of this table's material.</param>
    /// <param name="there">Grains of the other material.</param>
    /// <returns>A table whose finding asks for a weighed run. No error can be given for it.</returns>
    /// <exception cref="ArgumentException">A blank name, or fewer than two openings let the other material through.</exception>
    /// <remarks>Each flow is turned into the round hole that would give it, and the hole into the flow of the other grains
    /// (SPREAD-S28). Small seed comes out far faster than large seed at the same opening.</remarks>
    public GateTable ScaledToGrain(string material, GrainFlow here, GrainFlow there)
    {
        ArgumentNullException.ThrowIfNull(here);
        ArgumentNullException.ThrowIfNull(there);
        var through = Points
            .Where(p => p.PoundsPerMinute > 0)
            .Select(p => (p.Setting, Flow: there.PoundsPerMinuteThrough(here.HoleCentimeters(p.PoundsPerMinute))))
            .Where(p => p.Flow > 0)
            .ToList();
        return through.Count >= 2
            ? First(material, through)
            : throw new ArgumentException($"Fewer than two of the openings let {material} through.", nameof(there));
    }

    private GateTable Scaled(string material, Func<double, double> scale) =>
        First(material, Points.Select(p => (p.Setting, scale(p.PoundsPerMinute))));

    private GateTable First(string material, IEnumerable<(double Setting, double Flow)> points) =>
        new(
            Guard.NotBlank(material),
            [.. points.Select(p => GatePoint.Of(p.Setting, MassFlow.FromPoundsPerMinute(p.Flow)))],
            [
                material == Material
                    ? FindingCatalog.Create("spread-gate-moved", ("material", material))
                    : FindingCatalog.Create("spread-gate-first-guess", ("material", material), ("measured", Material)),
            ]
        );

    private GateAnswer Answer(double setting, double poundsPerMinute, bool above) =>
        new()
        {
            Material = Material,
            Setting = setting,
            Flow = MassFlow.FromPoundsPerMinute(poundsPerMinute),
            AboveTable = above,
            Findings = Finding.InOrder(
                above
                    ?
                    [
                        .. Findings,
                        FindingCatalog.Create(
                            "spread-gate-one-step-above",
                            ("material", Material),
                            ("highest", Amounts.Print(Points[^1].Setting, 3))
                        ),
                    ]
                    : Findings
            ),
        };

    private GateAnswer Nothing(Finding why) => new() { Material = Material, Findings = Finding.InOrder([.. Findings, why]) };

    private Finding BelowTable() =>
        FindingCatalog.Create("spread-gate-below", ("material", Material), ("lowest", Amounts.Print(Points[0].Setting, 3)));

    private static int FirstReversal(List<(double Setting, double Flow)> sorted)
    {
        for (int i = 1; i < sorted.Count; i++)
        {
            if (!(sorted[i].Flow > sorted[i - 1].Flow))
            {
                return i;
            }
        }

        return 0;
    }
}
