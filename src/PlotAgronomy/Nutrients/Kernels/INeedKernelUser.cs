namespace PlotAgronomy.Nutrients;

/// <summary>What is made of a system's kernel, whichever it is.</summary>
internal interface INeedKernelUser<out T>
{
    T Use<TKernel>(TKernel kernel)
        where TKernel : struct, INeedKernel;
}
