using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <content>First tables for another material.</content>
public sealed partial class GateTable
{
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
        double here = Guard.Above(curve.At(setting), 0, "lb/min in this table at the setting of the run", nameof(setting));
        double factor = flow / here;
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
            [.. points.Select(p => GatePoint.FromFlow(p.Setting, MassFlow.FromPoundsPerMinute(p.Flow)))],
            () =>
                [
                    material == Material
                        ? FindingCatalog.Create(SpreadingCodes.GateMoved, ("material", material))
                        : FindingCatalog.Create(SpreadingCodes.GateFirstGuess, ("material", material), ("measured", Material)),
                ]
        );
}
