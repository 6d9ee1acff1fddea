using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>Lime, or what was taken for lime, that has gone on a plot or is planned for it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeApplication
{
    private LimeApplication(Mass mass, LimingMaterial material, DateOnly? on)
    {
        Mass = mass;
        Material = material;
        On = on;
    }

    /// <summary>Gets the mass.</summary>
    public Mass Mass { get; }

    /// <summary>Gets the material.</summary>
    public LimingMaterial Material { get; }

    /// <summary>Gets the day, or null.</summary>
    public DateOnly? On { get; }

    /// <summary>Describes an application.</summary>
    /// <param name="mass">Mass on the plot; finite, at least 0.</param>
    /// <param name="material">Material.</param>
    /// <param name="on">Day, or null.</param>
    /// <returns>The application.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative, NaN or infinite mass.</exception>
    public static LimeApplication FromMass(Mass mass, LimingMaterial material, DateOnly? on = null)
    {
        ArgumentNullException.ThrowIfNull(material);
        double pounds = mass.Pounds;
        Guard.AtLeast(pounds, 0, "lb", nameof(mass));
        return new(mass, material, on);
    }

    /// <summary>Describes an application of whole bags.</summary>
    /// <param name="bags">Bags; at least 0.</param>
    /// <param name="bag">Mass of one bag; above 0.</param>
    /// <param name="material">Material.</param>
    /// <param name="on">Day, or null.</param>
    /// <returns>The application.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static LimeApplication FromBags(int bags, Mass bag, LimingMaterial material, DateOnly? on = null)
    {
        double pounds = bag.Pounds;
        return FromMass(
            Mass.FromPounds(Guard.AtLeast(bags, 0, "bags") * Guard.Above(pounds, 0, "lb", nameof(bag))),
            material,
            on
        );
    }

    internal static double PoundsOfBasis(ImmutableArray<LimeApplication> applications, LimeRate rate)
    {
        double pounds = 0;
        foreach (var application in applications)
        {
            pounds += application.PoundsOfBasis(rate);
        }

        return pounds;
    }

    /// <summary>Pounds of the rate's own lime this application stands for; 0 for a material that neutralizes nothing.</summary>
    internal double PoundsOfBasis(LimeRate rate)
    {
        double pounds = Mass.Pounds;
        return Material.Neutralizes ? pounds / rate.FactorFor(Material) : 0;
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Mass, "lb", 1)} of {Material.Name}";
}
