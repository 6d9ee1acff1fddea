namespace PlotAgronomy.Liming;

/// <summary>What is made of a method's kernel, whichever it is.</summary>
internal interface ILimeKernelUser<out T>
{
    T Use<TKernel>(TKernel kernel)
        where TKernel : struct, ILimeKernel;
}
