using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>A liming material as bought: what it neutralizes, how fine it is, how wet, and what its label states.</summary>
/// <remarks>A figure the label states in an index is taken as it stands; any other is computed from the calcium carbonate
/// equivalent and the sieve analysis. Nebraska's index counts the calcium carbonate equivalent as sold, water included
/// (LIME-S57): give that one when it is asked for.</remarks>
/// <example>
/// <code>
/// var pellets = LimingMaterial.FromLabel("lime pellets", LimingForm.Pelletized, LimeFigure.FromPoundsEqualToOneTon(2080));
/// Console.WriteLine(pellets);
/// // lime pellets
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed partial class LimingMaterial
{
    private LimingMaterial(string name, LimingForm form)
    {
        Name = name;
        Form = form;
    }

    /// <summary>Gets pure, dry calcium carbonate powder: the whole in every index.</summary>
    public static LimingMaterial PureCarbonate { get; } =
        new("pure calcium carbonate powder", LimingForm.GroundLimestone) { CcePercent = 100, IsPureCarbonate = true };

    /// <summary>Gets gypsum (calcium sulfate dihydrate): it neutralizes nothing.</summary>
    internal static LimingMaterial Gypsum { get; } = new("gypsum", LimingForm.Gypsum) { CcePercent = 0 };

    /// <summary>Gets the name on the bag or of the heap.</summary>
    public string Name { get; }

    /// <summary>Gets what it is.</summary>
    public LimingForm Form { get; }

    /// <summary>Gets the calcium carbonate equivalent in percent of dry matter, from 0 to 250; null when only a composite figure
    /// is known.</summary>
    public double? CcePercent { get; private init; }

    /// <summary>Gets the sieve analysis, or null.</summary>
    public SieveAnalysis? Sieves { get; private init; }

    /// <summary>Gets the moisture as sold.</summary>
    public Fraction Moisture { get; private init; }

    /// <summary>Gets the share of magnesium, or null when it is not known.</summary>
    public Fraction? Magnesium { get; private init; }

    /// <summary>Gets the figures its label states.</summary>
    public ImmutableArray<LimeFigure> StatedFigures { get; private init; } = [];

    /// <summary>Gets a value indicating whether it is the pure powder that every index calls whole.</summary>
    public bool IsPureCarbonate { get; private init; }

    /// <summary>Gets a value indicating whether it neutralizes acidity at all.</summary>
    public bool Neutralizes => Form != LimingForm.Gypsum && CcePercent != 0;

    /// <summary>Gets a value indicating whether it burns skin and eyes.</summary>
    public bool IsCaustic => Form is LimingForm.Hydrated or LimingForm.Quicklime;

    internal static string EquivalentAsked => "ask the dealer for its calcium carbonate equivalent";

    /// <summary>Tons of it for a ton of ordinary ground limestone: pound for pound, hydrated and burnt lime by their strength;
    /// null where that is not known.</summary>
    internal double? PerOrdinaryLime =>
        !IsCaustic ? 1
        : CcePercent is > 0 and { } cce ? LimeSums.StrengthFactor(LimingConstants.All["ordinary-lime-cce"], cce)
        : null;

    /// <summary>Share of pure carbonate that a pound of it is worth at the least, by whatever its label says; a figure of 0 says
    /// nothing here.</summary>
    internal double LeastStrength =>
        StatedFigures
            .Select(f => f.Value / f.Index.Whole)
            .Append((CcePercent ?? 100) / 100 * (1 - Moisture.Value) * LeastPassing)
            .Where(s => s > 0)
            .DefaultIfEmpty(1)
            .Min();

    private double LeastPassing =>
        Sieves?.Passing.Select(p => p.Passing.Value).Where(p => p > 0).DefaultIfEmpty(1).Min() ?? 1;

    /// <summary>Describes a material by its analysis.</summary>
    /// <param name="name">Name.</param>
    /// <param name="form">What it is.</param>
    /// <param name="ccePercent">Calcium carbonate equivalent in percent; from 0 to 250.</param>
    /// <param name="sieves">Sieve analysis, or null when it is not known.</param>
    /// <param name="moisture">Moisture as sold; below 100 %.</param>
    /// <param name="magnesium">Share of magnesium, or null when it is not known.</param>
    /// <returns>The material.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static LimingMaterial FromAnalysis(
        string name,
        LimingForm form,
        double ccePercent,
        SieveAnalysis? sieves = null,
        Fraction moisture = default,
        Fraction? magnesium = null
    )
    {
        return FromAnalysis(name, form, (double?)ccePercent, sieves, moisture, magnesium);
    }

    /// <summary>The same where the calcium carbonate equivalent may not be known; null then.</summary>
    internal static LimingMaterial FromAnalysis(
        string name,
        LimingForm form,
        double? ccePercent,
        SieveAnalysis? sieves,
        Fraction moisture,
        Fraction? magnesium
    )
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(moisture, Fraction.One);
        return new(Guard.NotBlank(name), Guard.Defined(form))
        {
            CcePercent = ccePercent is { } cce
                ? Guard.Between(cce, 0, LimingConstants.All["largest-cce"], "% calcium carbonate equivalent", nameof(ccePercent))
                : null,
            Sieves = sieves,
            Moisture = moisture,
            Magnesium = magnesium,
        };
    }

    /// <summary>Describes a material by one composite figure of its label.</summary>
    /// <param name="name">Name.</param>
    /// <param name="form">What it is.</param>
    /// <param name="figure">Figure in a state's index.</param>
    /// <returns>The material.</returns>
    public static LimingMaterial FromLabel(string name, LimingForm form, LimeFigure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return new(Guard.NotBlank(name), Guard.Defined(form))
        {
            CcePercent = figure.Index == LimeIndex.CalciumCarbonateEquivalent ? figure.Value : null,
            StatedFigures = [figure],
        };
    }

    /// <summary>The material that a rate of this basis is counted in: factor 1 by definition.</summary>
    /// <param name="basis">Basis.</param>
    /// <returns>The material.</returns>
    public static LimingMaterial FromBasis(LimeBasis basis)
    {
        ArgumentNullException.ThrowIfNull(basis);
        return basis.Figure is { } figure
            ? FromLabel(basis.Name, LimingForm.GroundLimestone, figure)
            : new(basis.Name, LimingForm.GroundLimestone);
    }

    /// <summary>The same material with a further figure of its label.</summary>
    /// <param name="figure">Figure in a state's index; it replaces one in the same index.</param>
    /// <returns>The material.</returns>
    public LimingMaterial WithFigure(LimeFigure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return new(Name, Form)
        {
            CcePercent = CcePercent ?? (figure.Index == LimeIndex.CalciumCarbonateEquivalent ? figure.Value : null),
            Sieves = Sieves,
            Moisture = Moisture,
            Magnesium = Magnesium,
            StatedFigures = [.. StatedFigures.Where(f => f.Index != figure.Index), figure],
        };
    }

    /// <summary>The material's figure in an index: stated on the label, else computed.</summary>
    /// <param name="index">Index.</param>
    /// <returns>The figure.</returns>
    /// <exception cref="InvalidOperationException">The label does not state it and what is known does not suffice; the message
    /// says what to ask the dealer.</exception>
    public LimeFigure FigureIn(LimeIndex index) =>
        TryFigureIn(index, out var figure, out string problem) ? figure! : throw new InvalidOperationException(problem);

    /// <summary>The material's figure in an index, when it is known.</summary>
    /// <param name="index">Index.</param>
    /// <param name="figure">The figure, or null.</param>
    /// <param name="problem">What to ask the dealer; empty when the figure is known.</param>
    /// <returns>True when it is known.</returns>
    /// <remarks>figure = CCE x fineness x (dry matter, where the index counts it) x whole of the index.</remarks>
    public bool TryFigureIn(LimeIndex index, out LimeFigure? figure, out string problem)
    {
        if (index is null)
        {
            figure = null;
            problem = "No index is named.";
            return false;
        }

        figure = FindFigure(index);
        problem = figure is null
            ? $"The figure of {Name} in {index.Name} is not known. Ask the dealer for {Missing(index)}."
            : "";
        return figure is not null;
    }

    /// <summary>The question to the dealer for the figure in an index; null when it is known.</summary>
    internal OpenQuestion<LimeFigure>? AskFigure(LimeIndex index) =>
        FindFigure(index) is not null
            ? null
            : QuestionCatalog.AskNumber(
                LimingCodes.AskLabel,
                percent => LimeFigure.FromValue(index, percent * index.Whole / 100),
                figure => $"{Amounts.Print(figure.Value, 0)} {index.Unit}",
                ("material", Name),
                ("index", index.Name),
                ("asked", Missing(index))
            );

    private string Missing(LimeIndex index)
    {
        return index.IsStatedOnly
            ? "the figure itself"
            : string.Join(" and ", Needed([.. index.Sieves.Where(m => Sieves?.Knows(m) != true)]));

        IEnumerable<string> Needed(List<int> meshes)
        {
            if (CcePercent is null)
            {
                yield return "the calcium carbonate equivalent";
            }

            if (meshes.Count > 0)
            {
                yield return $"the percent passing {string.Join(", ", meshes.Select(m => Amounts.Print(m, 0)))} mesh";
            }
        }
    }

    /// <summary>The material's figure in an index; null when it is not known.</summary>
    internal LimeFigure? FindFigure(LimeIndex index)
    {
        foreach (var stated in StatedFigures)
        {
            if (stated.Index == index)
            {
                return stated;
            }
        }

        if ((IsPureCarbonate && !index.IsRelative) || !Neutralizes)
        {
            return LimeFigure.FromValue(index, IsPureCarbonate ? index.Whole : 0);
        }

        if (index.IsStatedOnly || CcePercent is not { } cce || !IsFinenessKnown(index))
        {
            return null;
        }

        double fineness = index.Sieves.Length == 0 ? 1 : index.FinenessShare(Sieves!);
        double dry = index.CountsMoisture ? 1 - Moisture.Value : 1;
        return LimeFigure.FromValue(index, LimeStrength.Figure(cce, fineness, dry, index.Whole));
    }

    private bool IsFinenessKnown(LimeIndex index)
    {
        foreach (int mesh in index.Sieves)
        {
            if (Sieves?.Knows(mesh) != true)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Magnesium in a mass of this material.</summary>
    /// <param name="material">Mass of material.</param>
    /// <returns>Mass of magnesium, or null when its share is not known.</returns>
    /// <remarks>6 % magnesium is 120 lb per ton (20 x %Mg).</remarks>
    public Mass? MagnesiumIn(Mass material)
    {
        double pounds = material.Pounds;
        return Magnesium is { } share
            ? Mass.FromPounds(LimeStrength.Magnesium(Guard.AtLeast(pounds, 0, "lb", nameof(material)), share.Value))
            : null;
    }

    /// <summary>The name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
