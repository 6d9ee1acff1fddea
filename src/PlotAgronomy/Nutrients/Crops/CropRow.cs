namespace PlotAgronomy.Nutrients;

/// <summary>A crop row of the published tables. No system has them all; each says which it has.</summary>
public enum CropRow
{
    /// <summary>Deer and turkey food plot.</summary>
    DeerTurkeyPlot,

    /// <summary>Upland game food plot.</summary>
    UplandGamePlot,

    /// <summary>Waterfowl food plot.</summary>
    WaterfowlPlot,

    /// <summary>Alfalfa.</summary>
    Alfalfa,

    /// <summary>Clover.</summary>
    Clover,

    /// <summary>Small grain.</summary>
    SmallGrain,

    /// <summary>Wheat.</summary>
    Wheat,

    /// <summary>Oat.</summary>
    Oat,

    /// <summary>Corn for grain.</summary>
    Corn,

    /// <summary>Soybean for grain.</summary>
    Soybean,

    /// <summary>Corn and soybean, one dressing for both crops.</summary>
    CornAndSoybean,

    /// <summary>Grain sorghum.</summary>
    GrainSorghum,

    /// <summary>Brassica.</summary>
    Brassica,

    /// <summary>Forage.</summary>
    Forage,

    /// <summary>Grass pasture or hay.</summary>
    GrassPasture,

    /// <summary>New grass.</summary>
    GrassEstablishment,

    /// <summary>New grass under low nitrogen.</summary>
    ExtensiveGrassEstablishment,

    /// <summary>Grass grazed the whole season under low nitrogen.</summary>
    ExtensiveGrazedGrass,

    /// <summary>First-cut silage under low nitrogen.</summary>
    ExtensiveFirstCutSilage,

    /// <summary>First-cut silage or hay that gets less than 80 kg N/ha of chemical fertilizer.</summary>
    LowNitrogenFirstCutSilage,
}
