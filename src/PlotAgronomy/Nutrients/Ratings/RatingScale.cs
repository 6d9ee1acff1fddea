using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The classes of one system for one nutrient, test and scope.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RatingScale
{
    internal RatingScale() { }

    /// <summary>Gets the id of the scale, such as <c>NJ-P</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Gets what is rated.</summary>
    public required SoilAnalyte Analyte { get; init; }

    /// <summary>Gets the extractants the limits were made for.</summary>
    public required ImmutableArray<Extractant> Extractants { get; init; }

    /// <summary>Gets the unit of the limits; null for an index the system computes from several readings.</summary>
    public SoilTestUnit? Unit { get; init; }

    /// <summary>Gets the crop rows the limits are for; empty for all.</summary>
    public required ImmutableArray<CropRow> Crops { get; init; }

    /// <summary>Gets what else must hold.</summary>
    internal ScaleCondition Condition { get; init; }

    /// <summary>Gets the scope in words, such as <c>field-moist or slurry sample</c>.</summary>
    public required string Scope { get; init; }

    /// <summary>Gets the classes, poorest first.</summary>
    public required ImmutableArray<RatingClass> Classes
    {
        get;
        init
        {
            field = value;
            Limits = new(value);
        }
    }

    /// <summary>Gets the sources of the scale.</summary>
    public required ImmutableArray<Source> Sources { get; init; }

    /// <summary>Gets the unit in words, such as <c>ppm</c>.</summary>
    public string UnitInWords => Unit is { } unit ? SoilWords.For(unit) : "index";

    /// <summary>The limits of the classes, to be compared.</summary>
    internal ClassLimits Limits { get; private init; }

    /// <summary>The class of a value; null below zero and above the last class.</summary>
    internal RatingClass? ClassOf(double value) =>
        value >= 0 && Limits.IndexOf(value) is var index && index < Classes.Length ? Classes[index] : null;

    /// <summary>How well the limits on either side of a class are known.</summary>
    internal DataStatus StatusOf(RatingClass of) =>
        of.Order == 1 ? of.Origin.Status : Statuses.WeakestOf(of.Origin.Status, Classes[of.Order - 2].Origin.Status);

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Id;
}
