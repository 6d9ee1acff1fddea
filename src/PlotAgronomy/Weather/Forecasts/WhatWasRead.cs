using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>Remarks on a forecast as it was read.</summary>
internal static class WhatWasRead
{
    internal static ImmutableArray<Finding> Remarks(ImmutableArray<RainBlock> blocks, int unmentionedChances)
    {
        var remarks = new List<Finding>();
        if (unmentionedChances > 0)
        {
            remarks.Add(FindingCatalog.Create(WeatherCodes.ChanceBelowMention, ("count", DateText.Of(unmentionedChances))));
        }

        int without = blocks.Count(b => b.Millimeters > 0 && (b.Chance is null or 0));
        if (without > 0)
        {
            remarks.Add(FindingCatalog.Create(WeatherCodes.RainWithoutChance, ("count", DateText.Of(without))));
        }

        return Finding.InOrder(remarks);
    }
}
