using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>One product for several plots: how much of it all of them need, and the packages when they share.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SharedPurchase
{
    internal SharedPurchase() { }

    /// <summary>Gets what it is, by its name on the shelf or the kind and the lot.</summary>
    public required string Name { get; init; }

    /// <summary>Gets the package it is sold in.</summary>
    public required Package Package { get; init; }

    /// <summary>Gets the price of a package.</summary>
    public required decimal Price { get; init; }

    /// <summary>Gets what each plot needs of it.</summary>
    public required ImmutableArray<(Plot Plot, Mass Mass)> Needs { get; init; }

    /// <summary>Gets the packages that are there at all, in the shed or at the store; null where there is no end.</summary>
    public required int? Available { get; init; }

    /// <summary>Gets what all plots need.</summary>
    public Mass Needed => Mass.FromPounds(Needs.Sum(n => n.Mass.Pounds));

    /// <summary>Gets the packages when the plots share them; null where it is sold loose.</summary>
    public int? Together => Package.CountFor(Needed);

    /// <summary>Gets the packages when each plot buys for itself; null where it is sold loose.</summary>
    public int? Apart => Package.IsWhole ? Needs.Sum(n => Package.CountFor(n.Mass)!.Value) : null;

    /// <summary>Gets the cost when the plots share.</summary>
    public decimal Cost => Together is { } count ? count * Price : (decimal)(Needed / Package.Weight) * Price;

    /// <summary>Gets what sharing saves.</summary>
    public decimal Saved => Together is { } together && Apart is { } apart ? (apart - together) * Price : 0;

    /// <summary>Gets what is left over of the packages once all plots have theirs; zero where it is sold loose.</summary>
    public Mass LeftOver => Together is { } count ? (count * Package.Weight) - Needed : Mass.Zero;

    /// <summary>Gets the packages that are missing where there are not enough for all; else 0.</summary>
    public int Missing => Available is { } there && Together is { } count && count > there ? count - there : 0;

    /// <summary>What it is and how many.</summary>
    /// <returns>Text such as <c>10-20-20: 130 lb</c>.</returns>
    public override string ToString() => $"{Name}: {Amounts.Print(Needed, "lb", 1)}";
}
