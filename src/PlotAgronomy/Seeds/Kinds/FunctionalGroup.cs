namespace PlotAgronomy.Seeds;

/// <summary>What a kind does in a stand.</summary>
public enum FunctionalGroup
{
    /// <summary>Clovers, peas, vetches, beans and their kin: they fix nitrogen.</summary>
    Legume,

    /// <summary>Cool-season small grains.</summary>
    Cereal,

    /// <summary>All other grasses, sorghums, millets and corn among them.</summary>
    Grass,

    /// <summary>Rape, kale, turnips, radishes and mustards.</summary>
    Brassica,

    /// <summary>Beets.</summary>
    RootCrop,

    /// <summary>Broad-leaved kinds that are neither legumes nor brassicas.</summary>
    Forb,
}
