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
[JsonConverter(typeof(NotForJson))]
public sealed partial class GateTable
{
    private readonly MonotoneCurve curve;
    private readonly double? exponent;

    private readonly Func<ImmutableArray<Finding>> remarks;

    private GateTable(string material, ImmutableArray<GatePoint> points, Func<ImmutableArray<Finding>> remarks)
    {
        Material = material;
        Points = points;
        this.remarks = remarks;
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
    public ImmutableArray<Finding> Findings => remarks();

    private double OneStepAbove => Points[^1].Setting + (Points[^1].Setting - Points[^2].Setting);

    /// <summary>Makes a table of measured points.</summary>
    /// <param name="material">What was in the hopper; not blank.</param>
    /// <param name="points">Settings and flows, in any order; at least two different settings.</param>
    /// <returns>The table.</returns>
    /// <exception cref="ArgumentException">A blank name, fewer than two settings, or flows that fall more than once.</exception>
    public static GateTable FromPoints(string material, IReadOnlyList<GatePoint> points)
    {
        Guard.NotBlank(material);
        return TryFromPoints(material, Guard.NotEmpty(points), out var table, out string problem)
            ? table!
            : throw new ArgumentException(problem, nameof(points));
    }

    /// <summary>Makes a table of measured points, when they make one.</summary>
    /// <param name="material">What was in the hopper; not blank.</param>
    /// <param name="points">Settings and flows, in any order.</param>
    /// <param name="table">The table, or null.</param>
    /// <param name="problem">Why there is none; empty when there is one.</param>
    /// <returns>True when the points make a table.</returns>
    public static bool TryFromPoints(string material, IReadOnlyList<GatePoint> points, out GateTable? table, out string problem)
    {
        table = null;
        if (string.IsNullOrWhiteSpace(material) || points is null || points.Any(p => p is null))
        {
            problem = "A gate table needs the name of its material, and points without a gap.";
            return false;
        }

        if (!GateMeasurements.TrySort(material, points, out var sorted, out var pooled, out problem))
        {
            return false;
        }

        if (sorted.Count < 2)
        {
            problem = "A gate table needs at least two different settings.";
            return false;
        }

        table = new GateTable(
            material,
            [.. sorted.Select(p => GatePoint.FromFlow(p.Setting, MassFlow.FromPoundsPerMinute(p.Flow)))],
            () => pooled is null ? [] : [pooled()]
        );
        return true;
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
            return Nothing(BelowTable);
        }

        if (setting <= Points[^1].Setting)
        {
            return Inside(setting, curve.At(setting));
        }

        return exponent is { } power && !Tolerance.IsAbove(setting, OneStepAbove)
            ? FlowAbove(setting, power)
            : Nothing(AboveTable);
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
            return Nothing(() =>
                FindingCatalog.Create(
                    SpreadingCodes.FlowTooSmall,
                    ("flow", Amounts.Print(wanted, 3)),
                    ("smallest", Amounts.Print(Points[0].PoundsPerMinute, 3)),
                    ("material", Material)
                )
            );
        }

        if (wanted <= Points[^1].PoundsPerMinute)
        {
            return Inside(curve.ArgumentOf(wanted), wanted);
        }

        double? setting = exponent is { } power
            ? PowerLaw.Argument(Points[^1].Setting, Points[^1].PoundsPerMinute, power, wanted)
            : null;
        return setting is { } opened && !Tolerance.IsAbove(opened, OneStepAbove)
            ? SettingAbove(opened, wanted)
            : Nothing(AboveTable);
    }

    private GateAnswer Inside(double setting, double poundsPerMinute) =>
        new()
        {
            Material = Material,
            Setting = setting,
            Flow = MassFlow.FromPoundsPerMinute(poundsPerMinute),
            Remarks = () => Findings,
            Lines = () =>
                [
                    SpreadingFormulas
                        .All["spread-gate-inside-table"]
                        .Line(
                            $"{Material}: setting {Amounts.Print(setting, 2)} gives {Amounts.Print(poundsPerMinute, 4)} lb/min"
                        ),
                ],
        };

    private GateAnswer FlowAbove(double setting, double power)
    {
        double flow = PowerLaw.Value(Points[^1].Setting, Points[^1].PoundsPerMinute, power, setting);
        return Above(setting, flow, "spread-flow-above-table", () => $"{Amounts.Print(flow, 4)} lb/min");
    }

    private GateAnswer SettingAbove(double setting, double flow) =>
        Above(setting, flow, "spread-setting-above-table", () => Amounts.Print(setting, 2));

    private GateAnswer Above(double setting, double poundsPerMinute, string formula, Func<string> answer) =>
        new()
        {
            Material = Material,
            Setting = setting,
            Flow = MassFlow.FromPoundsPerMinute(poundsPerMinute),
            AboveTable = true,
            Remarks = () =>
                [
                    .. Findings,
                    FindingCatalog.Create(
                        SpreadingCodes.GateOneStepAbove,
                        ("material", Material),
                        ("highest", Amounts.Print(Points[^1].Setting, 3))
                    ),
                ],
            Lines = () =>
                [
                    SpreadingFormulas
                        .All[formula]
                        .Line(
                            answer(),
                            ("material", Material),
                            ("setting", Amounts.Print(setting, 2)),
                            ("flow", Amounts.Print(poundsPerMinute, 4)),
                            ("highest setting", Amounts.Print(Points[^1].Setting, 2)),
                            ("highest flow", Amounts.Print(Points[^1].PoundsPerMinute, 4)),
                            ("power", Amounts.Print(exponent!.Value, 3))
                        ),
                ],
        };

    private GateAnswer Nothing(Func<Finding> why) => new() { Material = Material, Remarks = () => [.. Findings, why()] };

    private Finding AboveTable() =>
        FindingCatalog.Create(
            SpreadingCodes.GateAbove,
            ("material", Material),
            ("highest", Amounts.Print(Points[^1].Setting, 3))
        );

    private Finding BelowTable() =>
        FindingCatalog.Create(SpreadingCodes.GateBelow, ("material", Material), ("lowest", Amounts.Print(Points[0].Setting, 3)));

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Material}: {Amounts.Print(Points.Length, 0)} settings";
}
