namespace PlotAgronomy.Fertilizers;

/// <summary>What an available part of manure is a part of.</summary>
public enum ManurePool
{
    /// <summary>Total nitrogen.</summary>
    TotalNitrogen,

    /// <summary>Organic nitrogen spread this year.</summary>
    OrganicNitrogenThisYear,

    /// <summary>Organic nitrogen spread last year.</summary>
    OrganicNitrogenLastYear,

    /// <summary>Organic nitrogen spread two years ago.</summary>
    OrganicNitrogenTwoYearsAgo,

    /// <summary>P2O5 and K2O, in the long run.</summary>
    PhosphateAndPotash,

    /// <summary>Phosphorus, in the first year.</summary>
    PhosphorusFirstYear,

    /// <summary>Phosphorus, later.</summary>
    PhosphorusLater,
}
